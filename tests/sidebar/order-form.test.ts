import { describe, expect, it } from "vitest";
import * as text from "../../src/sentences/made/orders-page";
import { dayText } from "../../src/sidebar/controls/day-words";
import { ofTen } from "../../src/sidebar/orders/chance-words";
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
    const sure = form.page().getByLabel(text.howSure());
    expect(await sure.locator("option").allTextContents()).toEqual([
      ...[0.5, 0.8, 0.9, 0.95].map(ofTen),
    ]);
    expect(await sure.inputValue()).toBe("0.8");
    expect(await form.page().getByLabel(text.method()).inputValue()).toBe("Cocoa cleft graft");
  });

  it("offers the chance that the nursery has set, also where it is an unusual one", async () => {
    await form.open({ sidebarOrders: () => ({ ...orders, assurance: 0.85 }) });
    const sure = form.page().getByLabel(text.howSure());
    expect(await sure.locator("option:checked").textContent()).toBe(ofTen(0.85));
  });

  it("says in words beside the field what is wrong, asks nothing, and leads there", async () => {
    await form.open();
    await form.button(text.plan()).click();
    await form.page().getByText(text.sayWanted()).waitFor();
    await form.page().getByText(text.sayBy()).waitFor();
    expect(await form.wanted().evaluate((one) => one === document.activeElement)).toBe(true);
    expect(await axeViolations(form.page())).toEqual([]);
    expectGolden("order-form", await markupOf(form.page(), "form.plan-form"));
    const told = await form.wanted().getAttribute("aria-describedby");
    expect(await form.page().locator(`#${told}`).textContent()).toBe(text.sayWanted());
    await form.wanted().fill("12.5");
    expect(await form.page().getByText(text.sayWanted()).isVisible()).toBe(false);
    expect(await form.wanted().getAttribute("aria-invalid")).toBeNull();
    await form.by().fill("2026-11-20");
    await form.button(text.plan()).click();
    await form.page().getByText(text.wholeNumber()).waitFor();
    await form
      .page()
      .getByText(text.dayIsPast({ asOf: dayText("2026-11-25") }))
      .waitFor();
    await form.wanted().fill("12");
    await form.button(text.plan()).click();
    expect(await form.by().evaluate((one) => one === document.activeElement)).toBe(true);
    expect(form.asked("sidebarPlanOrder")).toEqual([]);
  });

  it("keeps every entry when the script fails, and when another section was looked at", async () => {
    await form.open({
      sidebarPlanOrder: () => {
        throw new Error("harvest is no month");
      },
    });
    await form.fillIn();
    await form.page().getByLabel(text.howSure()).selectOption("0.95");
    await form.button(text.plan()).click();
    await form.page().getByText("harvest is no month").waitFor();
    expect(await form.focused()).toBe(text.plan());
    await form.sidebar().section("today");
    await form.sidebar().section("orders");
    expect(await form.variety().inputValue()).toBe("Corvane");
    expect(await form.wanted().inputValue()).toBe("150");
    expect(await form.by().inputValue()).toBe("2027-12-01");
    expect(await form.page().getByLabel(text.howSure()).inputValue()).toBe("0.95");
    expect(await form.button(text.plan()).isEnabled()).toBe(true);
  });
});
