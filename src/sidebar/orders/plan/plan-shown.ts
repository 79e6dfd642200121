import * as text from "../../../sentences/made/orders-page";
import type { PlannedOrderStep, PlanOrderAnswer, PlanOrderRequest } from "../../../wire/orders";
import { needWords } from "../../../wording/order-plan";
import { awayText, daysBetween, dayText } from "../../controls/day-words";
import { element } from "../../controls/element";
import { notes, paragraph } from "../../controls/paragraph";
import { sentenceNodes } from "../../controls/sentence-nodes";
import { userText } from "../../controls/user-text";
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
  const { wanted } = request;
  const by = dayText(request.by);
  const cases = ofTen(request.assurance);
  return [
    element(
      "h4",
      {},
      ...(request.variety === ""
        ? [text.planOf({ wanted, by })]
        : sentenceNodes((nodes) => text.planOfVariety({ wanted, by, ...nodes }), {
            variety: userText(request.variety),
          })),
    ),
    paragraph(
      ...(request.harvest === ""
        ? sentenceNodes((nodes) => text.sureIn({ cases, ...nodes }), { method: userText(method) })
        : sentenceNodes((nodes) => text.sureInFrom({ cases, ...nodes }), {
            method: userText(method),
            harvest: userText(request.harvest),
          })),
    ),
    ...(first === null ? [] : [firstThing(first, asOf)]),
    element(
      "ol",
      { class: "list steps" },
      ...steps.map((step) => element("li", {}, stepItem(step, step === first))),
    ),
    ...(needs.length === 0 ? [] : [needsInAll(needs)]),
    ...notes(remark),
  ];
}

/** The step with the earliest day, of equal days the first; null where none has a day. */
function firstOf(steps: readonly PlannedOrderStep[]): PlannedOrderStep | null {
  return steps.reduce<PlannedOrderStep | null>(
    (first, step) =>
      step.doBy !== null && (first?.doBy == null || step.doBy < first.doBy) ? step : first,
    null,
  );
}

function firstThing(step: PlannedOrderStep, asOf: string | null): HTMLElement {
  const { doBy, isPast, warnings } = step;
  const away = asOf === null ? "" : awayText(daysBetween(asOf, doBy ?? ""));
  const by = dayText(doBy ?? "");
  const when = () => {
    if (isPast) return text.wasDue({ day: away || by });
    return away === "" ? text.by({ by }) : text.byAway({ by, away });
  };
  return element(
    "div",
    { class: "note first" },
    paragraph(isPast ? element("span", { class: "mark late" }, text.past()) : text.firstToDo()),
    element("p", { class: "to-do" }, userText(step.step), " ", when()),
    paragraph(plantsNeeded(step)),
    warningsShown(warnings),
  );
}

function needsInAll(needs: PlanOrderAnswer["needs"]): HTMLElement {
  return element(
    "div",
    {},
    element("h4", {}, text.neededInAll()),
    element(
      "ul",
      { class: "samples" },
      ...needs.map((one) => element("li", {}, userText(needWords(one)))),
    ),
  );
}
