import type { WorkOverload } from "../../../workbook/sidebar-calls";
import { element } from "../../controls/element";
import { userText, wholeText } from "../../controls/user-text";

/** A stretch that asks for too much: the sum that proves it, what mends it, and whom it is about. */
export function overloadNote({ sentence, tasks, batches, persons }: WorkOverload): HTMLElement {
  const [what = "", ...proof] = sentence.split(": ");
  const fact = (name: string, text: string) => [
    element("dt", {}, name),
    element("dd", {}, userText(text)),
  ];
  return element(
    "div",
    { class: "note" },
    element(
      "p",
      {},
      element("strong", {}, userText(`${what}:`)),
      " ",
      wholeText(`${proof.join(": ")}.`),
    ),
    element(
      "dl",
      { class: "pairs" },
      ...fact("Tasks", tasks),
      ...fact("Batches", batches),
      ...(persons === "" ? [] : fact("Who can", persons)),
    ),
  );
}
