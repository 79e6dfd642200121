import { element } from "../../controls/element";
import { wholeText } from "../../controls/user-text";

/** Sentences that ask for care, behind one double line; null where there are none. */
export function warningsShown(sentences: readonly string[]): HTMLElement | null {
  if (sentences.length === 0) return null;
  return element(
    "div",
    { class: "warning" },
    ...sentences.map((sentence) => element("p", {}, wholeText(sentence))),
  );
}
