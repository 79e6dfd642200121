import { describe, expect, it } from "vitest";
import * as controlsText from "../../src/sentences/made/controls";
import * as text from "../../src/sentences/made/orders-page";
import { dayText } from "../../src/sidebar/controls/day-words";
import { shortened } from "../../src/sidebar/controls/shortened";
import type { PlanOrderAnswer } from "../../src/wire/orders";
import { needsWords, needWords, planFact, planWarning } from "../../src/wording/order-plan";
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
    expect(await first.locator(".to-do").textContent()).toBe(
      `Sowing ${text.byAway({ by: dayText("2027-04-22"), away: controlsText.away({ days: 148, when: "ahead" }) })}`,
    );
    expect(await first.textContent()).toContain(text.plants({ plants: 473 }));
    for (const one of plan.steps[0]?.warnings ?? []) {
      expect(await first.textContent()).toContain(planWarning(one));
    }
    for (const one of plan.steps[0]?.facts ?? []) {
      expect(await first.textContent()).not.toContain(planFact(one));
    }
    const { variety, harvest } = REQUEST;
    const title = text.planOfVariety({ wanted: 150, variety, by: dayText("2027-12-01") });
    expect((await form.focused()).startsWith(title)).toBe(true);
    const cases = text.ofTen({ tenths: "8" });
    expect(await form.shown().textContent()).toContain(
      text.sureInFrom({ method: plan.method, cases, harvest }),
    );
  });

  it("shows the steps in their order with day, plants and needs; opened, why and the caution", async () => {
    await form.planned();
    const steps = form.shown().locator(".step");
    expect(await steps.locator("strong").allTextContents()).toEqual(
      plan.steps.map(({ step }) => step),
    );
    expect(await steps.nth(2).textContent()).toContain(
      `Grafting${text.by({ by: dayText("2027-08-01") })}${text.plants({ plants: 340 })}`,
    );
    expect(await steps.nth(2).textContent()).toContain(needsWords(plan.steps[2]?.needs ?? []));
    await steps
      .nth(2)
      .getByText(text.plants({ plants: 340 }))
      .click();
    await steps
      .nth(2)
      .getByText((plan.steps[2]?.facts ?? []).map(planFact).join(" "))
      .waitFor();
    await steps.nth(2).getByText(text.caution()).click();
    await steps
      .nth(2)
      .getByText(plan.steps[2]?.caution ?? "")
      .waitFor();
    expect(await form.shown().locator(".samples li").allTextContents()).toEqual(
      plan.needs.map(needWords),
    );
    expect(await form.shown().textContent()).toContain(plan.remark);
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
    expect(await first.locator(".to-do").textContent()).toBe(
      `Sowing ${text.wasDue({ day: controlsText.away({ days: 155, when: "ago" }) })}`,
    );
    // Whole as long as it is no longer than any text that is shown at once.
    expect(await first.locator(".warning p bdi").allTextContents()).toEqual(
      latePlan.steps[0]?.warnings.map((one) => shortened(planWarning(one))),
    );
    expect(await form.shown().locator(".step .mark.late").allTextContents()).toEqual([
      text.past(),
      text.past(),
      text.past(),
    ]);
  });

  it("says where no number of plants is large enough", async () => {
    const [sowing] = plan.steps;
    await form.planned({
      sidebarPlanOrder: () =>
        ({ ...plan, steps: [{ ...sowing, plants: null, doBy: null }] }) as PlanOrderAnswer,
    });
    expect(await form.shown().locator(".step").textContent()).toContain(text.noNumber());
    expect(await form.shown().locator(".step").textContent()).toContain(text.dayUnknown());
    expect(await form.shown().locator(".first").count()).toBe(0);
  });

  it("that is no longer what the form holds says so and can't be kept, until it is again", async () => {
    await form.planned();
    await form.wanted().fill("151");
    await form.page().getByText(text.planOutdated()).waitFor();
    expect(await form.button(text.addOrder()).isVisible()).toBe(false);
    expect(await form.button(text.makeTab()).isVisible()).toBe(false);
    await form.wanted().fill("150");
    expect(await form.button(text.addOrder()).isVisible()).toBe(true);
    await form.page().getByLabel(text.method()).selectOption("Mango seedlings");
    expect(await form.button(text.makeTab()).isVisible()).toBe(false);
    await form.button(text.plan()).click();
    await form.button(text.makeTab()).waitFor();
    expect(await form.page().getByText(text.planOutdated()).count()).toBe(0);
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
    await form.button(text.plan()).click();
    await expect.poll(() => plans).toBe(2);
    expect(await form.button(text.plan()).isDisabled()).toBe(true);
    expect(await form.button(text.addOrder()).isDisabled()).toBe(true);
    await form.page().getByText(text.planning()).waitFor();
    letGo(plan);
    await form.settled();
  });
});
