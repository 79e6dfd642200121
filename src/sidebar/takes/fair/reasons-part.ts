import type { CompareAnswer, ReasonRow } from "../../../workbook/sidebar-calls";
import { listed, percentText } from "../../controls/count-words";
import { element } from "../../controls/element";
import { isolated } from "../../controls/shortened";
import { userText, wholeText } from "../../controls/user-text";
import type { Called } from "./compared-list";

/** What goes with takes, most first, with the warning that this is not what causes them. */
export function reasonsPart(
  { reasons, reasonsRemark, people }: CompareAnswer,
  called: Called,
): Node[] {
  return [
    element("p", {}, reasonsSentence(reasons)),
    element(
      "ol",
      { class: "list" },
      ...reasons.map((row) =>
        element("li", {}, reasonItem(row, row.column === people ? called : (name) => name)),
      ),
    ),
    ...(reasonsRemark === null
      ? []
      : [element("div", { class: "note" }, wholeText(reasonsRemark))]),
  ];
}

export function reasonsSentence(reasons: readonly ReasonRow[]): string {
  const linked = reasons.filter(({ best }) => best !== "");
  if (linked.length === 0) return "No recorded column clearly goes with takes.";
  const names = linked.map(({ column }) => isolated(column));
  const verb = linked.length === 1 ? "goes" : "go";
  return `${listed(names)} ${verb} with takes. The share is how much of the difference between batches each goes with, taken on its own.`;
}

function reasonItem(row: ReasonRow, called: Called): HTMLElement {
  const { column, explained, best, worst, reading } = row;
  const share = explained === null ? "" : percentText(explained);
  return element(
    "div",
    { class: "drawn" },
    element("p", { class: "drawn-words" }, userText(column), element("span", {}, share)),
    element("p", { class: "quiet" }, sentenceCase(reading)),
    best === ""
      ? null
      : element(
          "p",
          { class: "quiet" },
          "Best ",
          userText(renamed(best, called)),
          ", worst ",
          userText(renamed(worst, called)),
        ),
  );
}

/** "Kesto (64 %)" with the name as it is called. */
function renamed(text: string, called: Called): string {
  const end = text.lastIndexOf(" (");
  return end === -1 ? text : called(text.slice(0, end)) + text.slice(end);
}

function sentenceCase(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}
