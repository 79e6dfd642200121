import * as text from "../../sentences/made/check-page";
import type { CheckRow } from "../../wire/check";
import { actionButton } from "../controls/action-button";
import { element } from "../controls/element";
import { paragraph } from "../controls/paragraph";
import { sentenceNodes } from "../controls/sentence-nodes";
import { userText, wholeText } from "../controls/user-text";
import type { SidebarContext } from "../section";

/** A trouble: buttons that lead to its cells, what was found, what happens, what to do. */
export function troubleItem({ call, status }: SidebarContext, row: CheckRow): HTMLElement {
  const { trouble, found, whatHappens, whatToDo, rows, rowCount, plants, column } = row;
  const link = (at: number | null, label: HTMLElement) =>
    actionButton({
      label,
      status,
      doing: text.going(),
      work: async () => {
        const { selected } = await call("sidebarSelect", { row: at, column });
        status.say(...sentenceNodes(text.selected, { cell: userText(selected) }));
      },
    });
  const links = (): HTMLElement => {
    const [only = null] = rows;
    if (rowCount < 2) {
      const label = cellLabel(only, column);
      const place =
        label === null ? paragraph(element("strong", {}, text.wholeTable())) : link(only, label);
      return plants === null ? place : element("div", {}, place, " ", text.plants({ plants }));
    }
    const more = rowCount - rows.length;
    return element(
      "div",
      {},
      element(
        "div",
        {},
        column === "" ? null : element("strong", {}, userText(column), " "),
        text.severalRows({ rows: rowCount, plants: plants ?? 0 }),
      ),
      element(
        "div",
        { class: "buttons" },
        ...rows.map((at) => link(at, element("span", {}, text.row({ row: String(at) })))),
        more === 0 ? null : text.moreRows({ rows: more }),
      ),
    );
  };
  return element(
    "article",
    { class: "trouble" },
    links(),
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
function cellLabel(row: number | null, column: string): HTMLElement | null {
  const at = String(row);
  if (column === "") return row === null ? null : element("span", {}, text.row({ row: at }));
  const say = (header: { readonly column: string }) =>
    row === null ? text.column(header) : text.rowColumn({ row: at, ...header });
  return element("span", {}, ...sentenceNodes(say, { column: userText(column) }));
}
