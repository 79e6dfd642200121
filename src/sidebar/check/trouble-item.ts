import * as text from "../../sentences/made/check-page";
import type { CheckRow } from "../../wire/check";
import { type Child, element } from "../controls/element";
import { plainButton } from "../controls/plain-button";
import { sentenceNodes } from "../controls/sentence-nodes";
import { userText, wholeText } from "../controls/user-text";
import type { SidebarContext } from "../section";
import { askedInSetUp } from "./asked-in-set-up";
import { placeLink, rowLinks } from "./row-links";

/**
 * A trouble: what is wrong and what follows from it, what to do, the way to where it is mended, and last the
 * cells that it is about.
 */
export function troubleItem(context: SidebarContext, row: CheckRow): HTMLElement {
  const { code, trouble, found, whatHappens, whatToDo, rows, plants, column, tab } = row;
  const line = (label: string, ...words: readonly Child[]) =>
    element("div", {}, element("b", {}, label), " ", ...words);
  const size =
    rows.length > 1
      ? text.severalRows({ rows: rows.length, plants: plants ?? 0 })
      : plants === null
        ? null
        : text.plants({ plants });
  const [only = null] = rows;
  const isNowhere = only === null && column === "";
  const part = askedInSetUp(row);
  const places = rows.map((at) => ({ row: at, column }));
  return element(
    "article",
    { class: "trouble" },
    element(
      "div",
      { class: "trouble-words" },
      element("div", {}, element("strong", {}, wholeText(trouble))),
      // A column without a header is found by its letter.
      isNowhere && tab === null && code !== "column-left"
        ? line(text.where(), text.wholeTable())
        : null,
      found === "" ? null : line(text.found(), wholeText(found)),
      size === null ? null : line(text.howMany(), size),
      line(text.whatHappens(), wholeText(whatHappens)),
      line(text.whatToDo(), wholeText(whatToDo)),
    ),
    part === null
      ? null
      : element(
          "div",
          { class: "buttons" },
          plainButton(text.answerInSetUp(), () => void context.lead("set-up", part)),
        ),
    rows.length > 1
      ? element(
          "div",
          {},
          ...(column === ""
            ? [text.goToRows()]
            : sentenceNodes(text.goToRowsUnder, { column: userText(column) })),
          rowLinks(context, places),
        )
      : isNowhere
        ? tab === null
          ? null
          : placeLink(context, { row: null, column, tab }, tabLabel(tab))
        : placeLink(context, { row: only, column }, cellLabel(only, column)),
  );
}

function tabLabel(tab: string): HTMLElement {
  return element("span", {}, ...sentenceNodes(text.tab, { tab: userText(tab) }));
}

/** Where the trouble is: a cell, a row, or a column. */
function cellLabel(row: number | null, column: string): HTMLElement {
  const at = String(row);
  if (column === "") return element("span", {}, text.goToRow({ row: at }));
  const say = (header: { readonly column: string }) =>
    row === null ? text.column(header) : text.rowColumn({ row: at, ...header });
  return element("span", {}, ...sentenceNodes(say, { column: userText(column) }));
}
