import type { Question } from "../../workbook/sidebar-calls";
import { actionButton } from "../controls/action-button";
import { element } from "../controls/element";
import { plainValue } from "../controls/plain-value";
import type { StatusLine } from "../controls/status-line";
import { wholeText } from "../controls/user-text";

export interface AskedOptions {
  readonly questions: readonly Question[];
  readonly status: StatusLine;
  readonly onAnyway: () => Promise<void>;
  readonly onLeave: () => void;
}

/** What the script wants to know before it writes, each with what stands and what would. */
export function askedList({ questions, status, onAnyway, onLeave }: AskedOptions): HTMLElement {
  const leave = element("button", { type: "button", class: "plain" }, "Leave as it is");
  leave.addEventListener("click", onLeave);
  return element(
    "div",
    { class: "asked", role: "group", "aria-label": "Before it is written", tabindex: -1 },
    element("p", {}, element("strong", {}, "Nothing is written yet.")),
    ...questions.map(questionAsked),
    element(
      "div",
      { class: "buttons" },
      actionButton({
        label: "Write anyway",
        kind: "main",
        status,
        doing: "Writing to the records",
        work: onAnyway,
      }),
      leave,
    ),
  );
}

/** A question with both values; those about no cell have none. */
export function questionAsked({ question, stands, would }: Question): HTMLElement {
  return element(
    "div",
    { class: "question" },
    wholeText(question),
    stands === null && would === null
      ? null
      : element(
          "dl",
          { class: "pairs" },
          element("dt", {}, "Stands now"),
          element("dd", {}, plainValue(stands)),
          element("dt", {}, "Would be"),
          element("dd", {}, plainValue(would)),
        ),
  );
}
