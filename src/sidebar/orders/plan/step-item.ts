import * as text from "../../../sentences/made/orders-page";
import type { PlannedOrderStep } from "../../../wire/orders";
import { needsWords, planFact } from "../../../wording/order-plan";
import { dayText } from "../../controls/day-words";
import { disclosure } from "../../controls/disclosure";
import { element } from "../../controls/element";
import { paragraph } from "../../controls/paragraph";
import { shortened } from "../../controls/shortened";
import { userText, wholeText } from "../../controls/user-text";
import { warningsShown } from "./warnings";

/** A step of a plan: by which day, from how many plants, with what; opened, why so many, and the caution. */
export function stepItem(planned: PlannedOrderStep, isFirst: boolean): HTMLElement {
  const { step, doBy, isPast, needs, facts, warnings, caution } = planned;
  // Those of the first step stand above the list already, and the mark says what is past.
  const shown = isFirst ? [] : warnings.filter(({ code }) => !isPast || code !== "day-past");
  return element(
    "div",
    { class: "step" },
    element(
      "p",
      { class: "step-words" },
      element("strong", {}, userText(step)),
      element("span", {}, doBy === null ? text.dayUnknown() : text.by({ by: dayText(doBy) })),
      isPast ? element("span", { class: "mark late" }, text.past()) : null,
    ),
    facts.length === 0
      ? element("p", { class: "no-more" }, plantsNeeded(planned))
      : folded(plantsNeeded(planned), facts.map(planFact)),
    needs.length === 0
      ? null
      : element("p", { class: "quiet no-more" }, wholeText(needsWords(needs))),
    warningsShown(shown),
    folded(text.caution(), caution === "" ? [] : [caution]),
  );
}

/** "no number is large enough" where there is no number: that is not none. */
export function plantsNeeded({ plants }: PlannedOrderStep): string {
  return plants === null ? text.noNumber() : text.plants({ plants });
}

/** A caution that was opened is read whole; this is longer than any that is not pasted by mistake. */
const LONGEST = 2000;

function folded(summary: string, sentences: readonly string[]): HTMLElement | null {
  if (sentences.length === 0) return null;
  const content = () =>
    element(
      "div",
      {},
      ...sentences.map((one) => paragraph(element("bdi", {}, shortened(one, LONGEST)))),
    );
  return disclosure({ summary, content });
}
