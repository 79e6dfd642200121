import * as text from "../../sentences/made/check-page";
import type { CheckRow } from "../../wire/check";
import { actionButton } from "../controls/action-button";
import { element } from "../controls/element";
import { paragraph } from "../controls/paragraph";
import { sentenceNodes } from "../controls/sentence-nodes";
import { userText, wholeText } from "../controls/user-text";
import type { SidebarContext } from "../section";

/** A trouble: a button that leads to its cell, what was found, what happens, what to do. */
export function troubleItem({ call, status }: SidebarContext, row: CheckRow): HTMLElement {
  const { trouble, found, whatHappens, whatToDo } = row;
  const cell = cellLabel(row);
  return element(
    "article",
    { class: "trouble" },
    cell === null
      ? paragraph(element("strong", {}, text.wholeTable()))
      : actionButton({
          label: cell,
          status,
          doing: text.going(),
          work: async () => {
            const { selected } = await call("sidebarSelect", { row: row.row, column: row.column });
            status.say(...sentenceNodes(text.selected, { cell: userText(selected) }));
          },
        }),
    element(
      "div",
      { class: "trouble-words" },
      element("div", {}, wholeText(trouble)),
      found === ""
        ? null
        : element("div", {}, element("b", {}, text.found()), " ", wholeText(found)),
      element("div", {}, element("b", {}, text.whatHappens()), " ", wholeText(whatHappens)),
      element("div", {}, element("b", {}, text.whatToDo()), " ", wholeText(whatToDo)),
    ),
  );
}

/** Where the trouble is; null where it is about the whole table. */
function cellLabel({ row, column }: CheckRow): HTMLElement | null {
  const at = String(row);
  if (column === "") return row === null ? null : element("span", {}, text.row({ row: at }));
  const say = (header: { readonly column: string }) =>
    row === null ? text.column(header) : text.rowColumn({ row: at, ...header });
  return element("span", {}, ...sentenceNodes(say, { column: userText(column) }));
}
