import * as text from "../../sentences/made/writing";
import type { Question } from "../../wire/writing";
import { askedSentence } from "../../wording/writing";
import { actionButton } from "../controls/action-button";
import { element } from "../controls/element";
import { paragraph } from "../controls/paragraph";
import { plainButton } from "../controls/plain-button";
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
  const leave = plainButton(text.leave(), onLeave);
  return element(
    "div",
    { class: "asked", role: "group", "aria-label": text.before(), tabindex: -1 },
    paragraph(element("strong", {}, text.notYet())),
    ...questions.map(questionAsked),
    element(
      "div",
      { class: "buttons" },
      actionButton({
        label: text.writeAnyway(),
        kind: "main",
        status,
        doing: text.writing(),
        work: onAnyway,
      }),
      leave,
    ),
  );
}

/** A question with both values; those about no cell have none. */
export function questionAsked({ ask, stands, would }: Question): HTMLElement {
  return element(
    "div",
    { class: "question" },
    wholeText(askedSentence(ask)),
    stands === null && would === null
      ? null
      : element(
          "dl",
          { class: "pairs" },
          element("dt", {}, text.stands()),
          element("dd", {}, plainValue(stands)),
          element("dt", {}, text.would()),
          element("dd", {}, plainValue(would)),
        ),
  );
}
