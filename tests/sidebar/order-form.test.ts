import { describe, expect, it } from "vitest";
import { axeViolations } from "./axe-violations";
import { expectGolden, markupOf } from "./golden";
import { orders } from "./order-answers";
import { orderForm } from "./order-form";

const form = orderForm();

describe("the form of a new order", () => {
  it("suggests the varieties, the methods, and how sure it has to be as it was set", async () => {
    await form.open();
    const suggested = await form
      .page()
      .locator("#order-varieties option")
      .evaluateAll((all) => all.map((one) => (one as HTMLOptionElement).value));
    expect(suggested).toEqual(orders.varieties);
    const sure = form.page().getByLabel(/^How sure/);
    expect(await sure.locator("option").allTextContents()).toEqual([
      ...["5 of 10", "8 of 10", "9 of 10", "9.5 of 10"],
    ]);
    expect(await sure.inputValue()).toBe("0.8");
    expect(await form.page().getByLabel("Method").inputValue()).toBe("Cocoa cleft graft");
  });

  it("offers the chance that the nursery has set, also where it is an unusual one", async () => {
    await form.open({ sidebarOrders: () => ({ ...orders, assurance: 0.85 }) });
    const sure = form.page().getByLabel(/^How sure/);
    expect(await sure.locator("option:checked").textContent()).toBe("8.5 of 10");
  });

  it("says in words beside the field what is wrong, asks nothing, and leads there", async () => {
    await form.open();
    await form.button("Plan").click();
    await form.page().getByText("Say how many plants are wanted.").waitFor();
    await form.page().getByText("Say by which day they are to be ready.").waitFor();
    expect(await form.wanted().evaluate((one) => one === document.activeElement)).toBe(true);
    expect(await axeViolations(form.page())).toEqual([]);
    expectGolden("order-form", await markupOf(form.page(), "form.plan-form"));
    const told = await form.wanted().getAttribute("aria-describedby");
    expect(await form.page().locator(`#${told}`).textContent()).toBe(
      "Say how many plants are wanted.",
    );
    await form.wanted().fill("12.5");
    expect(await form.page().getByText("Say how many plants are wanted.").isVisible()).toBe(false);
    expect(await form.wanted().getAttribute("aria-invalid")).toBeNull();
    await form.by().fill("2026-11-20");
    await form.button("Plan").click();
    await form.page().getByText("A whole number, 1 or more.").waitFor();
    await form.page().getByText("That day is past: today counts as 25 Nov 2026.").waitFor();
    await form.wanted().fill("12");
    await form.button("Plan").click();
    expect(await form.by().evaluate((one) => one === document.activeElement)).toBe(true);
    expect(form.asked("sidebarPlanOrder")).toEqual([]);
  });

  it("keeps every entry when the script fails, and when another section was looked at", async () => {
    await form.open({
      sidebarPlanOrder: () => {
        throw new Error('harvest must hold months such as "Oct-Mar, May-Aug"; found "x"');
      },
    });
    await form.fillIn();
    await form
      .page()
      .getByLabel(/^How sure/)
      .selectOption("0.95");
    await form.button("Plan").click();
    await form.page().getByText("harvest must hold months").waitFor();
    expect(await form.focused()).toBe("Plan");
    await form.sidebar().section("Today");
    await form.sidebar().section("Orders");
    expect(await form.variety().inputValue()).toBe("Corvane");
    expect(await form.wanted().inputValue()).toBe("150");
    expect(await form.by().inputValue()).toBe("2027-12-01");
    expect(
      await form
        .page()
        .getByLabel(/^How sure/)
        .inputValue(),
    ).toBe("0.95");
    expect(await form.button("Plan").isEnabled()).toBe(true);
  });
});
