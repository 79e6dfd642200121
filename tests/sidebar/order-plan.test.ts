import { describe, expect, it } from "vitest";
import type { PlanOrderAnswer } from "../../src/workbook/sidebar-calls";
import { axeViolations } from "./axe-violations";
import { expectGolden, markupOf } from "./golden";
import { latePlan, plan } from "./order-answers";
import { orderForm, REQUEST } from "./order-form";

const form = orderForm();

describe("a plan", () => {
  it("is asked as it was entered, shows what comes first, and has the focus", async () => {
    await form.planned();
    expect(form.asked("sidebarPlanOrder")).toEqual([REQUEST]);
    const first = form.shown().locator(".first");
    expect(await first.locator(".to-do").textContent()).toBe("Sowing by 22 Apr 2027, in 148 days");
    expect(await first.textContent()).toContain("473 plants");
    expect(await first.textContent()).toContain("Seed would be taken outside the harvest months");
    expect(await first.textContent()).not.toContain("Plain division");
    expect(await form.focused()).toMatch(/^Plan: 150 plants of Corvane by 1 Dec 2027/);
    expect(await form.shown().textContent()).toContain("sure in 8 of 10 cases");
  });

  it("shows the steps in their order with day, plants and needs; opened, why and the caution", async () => {
    await form.planned();
    const steps = form.shown().locator(".step");
    expect(await steps.locator("strong").allTextContents()).toEqual(
      plan.steps.map(({ step }) => step),
    );
    expect(await steps.nth(2).textContent()).toContain("Graftingby 1 Aug 2027340 plants");
    expect(await steps.nth(2).textContent()).toContain("scion 340; wrap strip 129.6 m");
    await steps.nth(2).getByText("340 plants").click();
    await steps.nth(2).getByText("Plain division by what is kept: 232; 108 more").waitFor();
    await steps.nth(2).getByText("Caution").click();
    await steps
      .nth(2)
      .getByText(plan.steps[2]?.caution ?? "")
      .waitFor();
    expect(await form.shown().locator(".samples li").allTextContents()).toEqual(
      plan.needs.split("; "),
    );
    expect(await form.shown().textContent()).toContain("2 rows left out: see Check");
  });

  it("has the markup that was looked at, nothing that axe-core finds wrong, and fits half the width", async () => {
    await form.planned();
    await form.page().evaluate(() => {
      for (const details of document.querySelectorAll("details")) details.open = true;
    });
    await form
      .page()
      .getByText(plan.steps.at(-1)?.caution ?? "")
      .waitFor();
    expect(await axeViolations(form.page())).toEqual([]);
    expectGolden("order-plan", await markupOf(form.page(), ".plan"));
    for (const width of [300, 150]) {
      await form.page().setViewportSize({ width, height: 400 });
      const wide = await form.page().evaluate(() => {
        const { scrollWidth, clientWidth } = document.documentElement;
        return scrollWidth - clientWidth;
      });
      expect(wide).toBe(0);
    }
    expect(form.sidebar().complaints).toEqual([]);
  });

  it("has no control that is hard to hit", async () => {
    await form.planned();
    const low = await form
      .page()
      .evaluate(() =>
        [...document.querySelectorAll("#section-orders :is(button, summary, input, select)")]
          .map((one) => ({ words: one.textContent, height: one.getBoundingClientRect().height }))
          .filter(({ height }) => height > 0 && height < 24),
      );
    // 24 pixels: W3C, Web Content Accessibility Guidelines 2.2, success criterion 2.5.8.
    expect(low).toEqual([]);
  });

  it("says that the start is past, and what can still be done", async () => {
    await form.planned({ sidebarPlanOrder: () => latePlan });
    const first = form.shown().locator(".first");
    expect(await first.locator(".to-do").textContent()).toBe("Sowing was due 155 days ago");
    expect(await first.locator(".warning p").allTextContents()).toEqual([
      "Too late: the start was due by 23 Jun 2026.",
      "Started on 25 Nov 2026, 150 can be met by 6 Jul 2027.",
      "By 1 Feb 2027 a new start can meet none; what stands can meet 150, if not promised to others.",
    ]);
    expect(await form.shown().locator(".step .mark.late").allTextContents()).toEqual([
      ...["past", "past", "past"],
    ]);
  });

  it("says where no number of plants is large enough", async () => {
    const [sowing] = plan.steps;
    await form.planned({
      sidebarPlanOrder: () =>
        ({ ...plan, steps: [{ ...sowing, plants: null, doBy: null }] }) as PlanOrderAnswer,
    });
    expect(await form.shown().locator(".step").textContent()).toContain(
      "no number is large enough",
    );
    expect(await form.shown().locator(".step").textContent()).toContain("day not known");
    expect(await form.shown().locator(".first").count()).toBe(0);
  });

  it("that is no longer what the form holds says so and can't be kept, until it is again", async () => {
    await form.planned();
    await form.wanted().fill("151");
    await form.page().getByText("This plan is for what the form held before.").waitFor();
    expect(await form.button("Add to the orders").isVisible()).toBe(false);
    expect(await form.button("Make a tab").isVisible()).toBe(false);
    await form.wanted().fill("150");
    expect(await form.button("Add to the orders").isVisible()).toBe(true);
    await form.page().getByLabel("Method").selectOption("Mango seedlings");
    expect(await form.button("Make a tab").isVisible()).toBe(false);
    await form.button("Plan").click();
    await form.button("Make a tab").waitFor();
    expect(await form.page().getByText("This plan is for what the form held before.").count()).toBe(
      0,
    );
  });

  it("disables form and buttons while it is worked out", async () => {
    let letGo: (answer: PlanOrderAnswer) => void = () => {};
    let plans = 0;
    await form.planned({
      sidebarPlanOrder: () => {
        plans += 1;
        if (plans === 1) return plan;
        return new Promise((resolve) => {
          letGo = resolve;
        });
      },
    });
    await form.button("Plan").click();
    await expect.poll(() => plans).toBe(2);
    expect(await form.button("Plan").isDisabled()).toBe(true);
    expect(await form.button("Add to the orders").isDisabled()).toBe(true);
    await form.page().getByText("Planning the order …").waitFor();
    letGo(plan);
    await form.settled();
  });
});
