import * as text from "../../../sentences/made/work-page";
import type { WorkOverload } from "../../../wire/work";
import { fewNames } from "../../../wording/names";
import { tooMuchDays, tooMuchSum } from "../../../wording/work";
import { element } from "../../controls/element";
import { paragraph } from "../../controls/paragraph";
import { userText } from "../../controls/user-text";

const MOST_NAMES = 4;

/** A stretch that asks for too much: the sum that proves it, what mends it, and whom it is about. */
export function overloadNote(overload: WorkOverload): HTMLElement {
  const { tasks, batches, persons } = overload;
  const fact = (name: string, names: readonly string[]) => [
    element("dt", {}, name),
    element("dd", {}, userText(fewNames(names, MOST_NAMES).join(", "))),
  ];
  return element(
    "div",
    { class: "note" },
    paragraph(element("strong", {}, tooMuchDays(overload)), " ", tooMuchSum(overload)),
    element(
      "dl",
      { class: "pairs" },
      ...fact(text.tasks(), tasks),
      ...fact(text.batches(), batches),
      ...(persons.length === 0 ? [] : fact(text.whoCan(), persons)),
    ),
  );
}
