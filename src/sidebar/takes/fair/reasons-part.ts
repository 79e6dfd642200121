import type { CompareAnswer, ReasonRow } from "../../../workbook/sidebar-calls";
import { listed, percentText } from "../../controls/count-words";
import { element } from "../../controls/element";
import { isolated } from "../../controls/shortened";
import { userText, wholeText } from "../../controls/user-text";
import type { Called } from "../../people/people-shown";

const READINGS: Readonly<Record<ReasonRow["reading"], string>> = {
  stays: "Goes with takes, also where the other columns are alike.",
  "others may be behind": "Goes with takes, but what else differed may be behind it.",
  "not told apart": "Goes with takes; too few batches to tell it from the others.",
  alone: "Goes with takes.",
  "only beside": "Shows only where the other columns are alike.",
  "no clear link": "No clear link.",
  "too few to tell": "Too few to tell.",
};

/** What goes with takes, most first, with the warning that this is not what causes them. */
export function reasonsPart({ reasons, reasonsRemark }: CompareAnswer, called: Called): Node[] {
  return [
    element("p", {}, reasonsSentence(reasons)),
    element(
      "ol",
      { class: "list" },
      ...reasons.map((row) => element("li", {}, reasonItem(row, called))),
    ),
    ...(reasonsRemark === null
      ? []
      : [element("div", { class: "note" }, wholeText(reasonsRemark))]),
  ];
}

export function reasonsSentence(reasons: readonly ReasonRow[]): string {
  const linked = reasons.filter(({ best }) => best !== null);
  if (linked.length === 0) return "No recorded column clearly goes with takes.";
  const names = linked.map(({ column }) => isolated(column));
  const verb = linked.length === 1 ? "goes" : "go";
  return `${listed(names)} ${verb} with takes. The share is how much of the difference between batches each goes with, taken on its own.`;
}

function reasonItem(row: ReasonRow, called: Called): HTMLElement {
  const { column, explained, best, worst, reading } = row;
  const share = explained === null ? "" : percentText(explained);
  const named = (one: NonNullable<ReasonRow["best"]>) =>
    userText(`${called([one.name])} (${percentText(one.takeRate)})`);
  return element(
    "div",
    { class: "drawn" },
    element("p", { class: "drawn-words" }, userText(column), element("span", {}, share)),
    element("p", { class: "quiet" }, READINGS[reading]),
    best === null || worst === null
      ? null
      : element("p", { class: "quiet" }, "Best ", named(best), ", worst ", named(worst)),
  );
}
