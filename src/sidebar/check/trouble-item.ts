import type { CheckRow } from "../../workbook/sidebar-calls";
import { actionButton } from "../controls/action-button";
import { element } from "../controls/element";
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
      ? element("p", {}, element("strong", {}, "The whole table"))
      : actionButton({
          label: cell,
          status,
          doing: "Going to the cell",
          work: async () => {
            const { selected } = await call("sidebarSelect", { row: row.row, column: row.column });
            status.say("Selected in the sheet: ", userText(selected));
          },
        }),
    element(
      "div",
      { class: "trouble-words" },
      element("div", {}, wholeText(trouble)),
      found === "" ? null : element("div", {}, element("b", {}, "Found: "), wholeText(found)),
      element("div", {}, element("b", {}, "What happens: "), wholeText(whatHappens)),
      element("div", {}, element("b", {}, "What to do: "), wholeText(whatToDo)),
    ),
  );
}

/** Where the trouble is; null where it is about the whole table. */
function cellLabel({ row, column }: CheckRow): HTMLElement | null {
  if (row === null && column === "") return null;
  const words = row === null ? "Column " : `Row ${row}${column === "" ? "" : ", "}`;
  return element("span", {}, words, column === "" ? null : userText(column));
}
