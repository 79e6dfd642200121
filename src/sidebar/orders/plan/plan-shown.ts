import type {
  PlannedOrderStep,
  PlanOrderAnswer,
  PlanOrderRequest,
} from "../../../workbook/sidebar-calls";
import { counted } from "../../controls/count-words";
import { awayText, daysBetween, dayText } from "../../controls/day-words";
import { element } from "../../controls/element";
import { userText, wholeText } from "../../controls/user-text";
import { ofTen } from "../chance-words";
import { plantsNeeded, stepItem } from "./step-item";
import { warningsShown } from "./warnings";

export interface PlanShownOptions {
  /** What was planned. */
  readonly request: PlanOrderRequest;
  readonly answer: PlanOrderAnswer;
  /** ISO text; null when not known. */
  readonly asOf: string | null;
}

/** A plan: for what it is, what comes first, the steps in their order, and all that is needed. */
export function planShown({ request, answer, asOf }: PlanShownOptions): HTMLElement[] {
  const { steps, needs, remark, method } = answer;
  const first = firstOf(steps);
  return [
    element(
      "h4",
      {},
      `Plan: ${counted(request.wanted, "plant", "plants")} `,
      ...(request.variety === "" ? [] : ["of ", userText(request.variety), " "]),
      `by ${dayText(request.by)}`,
    ),
    element(
      "p",
      {},
      userText(method),
      `, sure in ${ofTen(request.assurance)} cases`,
      ...(request.harvest === "" ? ["."] : [", seed from ", userText(request.harvest), "."]),
    ),
    ...(first === null ? [] : [firstThing(first, asOf)]),
    element(
      "ol",
      { class: "list steps" },
      ...steps.map((step) => element("li", {}, stepItem(step, step === first))),
    ),
    ...(needs === "" ? [] : [needsInAll(needs)]),
    ...(remark === null ? [] : [element("div", { class: "note" }, wholeText(remark))]),
  ];
}

/** The step with the earliest day, of equal days the first; null where none has a day. */
function firstOf(steps: readonly PlannedOrderStep[]): PlannedOrderStep | null {
  let first: PlannedOrderStep | null = null;
  for (const step of steps) {
    if (step.doBy !== null && (first?.doBy == null || step.doBy < first.doBy)) first = step;
  }
  return first;
}

function firstThing(step: PlannedOrderStep, asOf: string | null): HTMLElement {
  const { doBy, isPast, warnings } = step;
  const away = asOf === null ? "" : awayText(daysBetween(asOf, doBy ?? ""));
  const when = isPast
    ? [` was due ${away || dayText(doBy ?? "")}`]
    : [` by ${dayText(doBy ?? "")}${away === "" ? "" : `, ${away}`}`];
  return element(
    "div",
    { class: "note first" },
    element("p", {}, isPast ? element("span", { class: "mark late" }, "past") : "First to do:"),
    element("p", { class: "to-do" }, userText(step.step), ...when),
    element("p", {}, plantsNeeded(step)),
    warningsShown(warnings),
  );
}

function needsInAll(needs: string): HTMLElement {
  return element(
    "div",
    {},
    element("h4", {}, "Needed in all"),
    element(
      "ul",
      { class: "samples" },
      ...needs.split("; ").map((item) => element("li", {}, userText(item))),
    ),
  );
}
