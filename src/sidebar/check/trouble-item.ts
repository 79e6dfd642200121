import * as text from "../../sentences/made/check-page";
import type { CheckRow } from "../../wire/check";
import { actionButton } from "../controls/action-button";
import { disclosure } from "../controls/disclosure";
import { type Child, element } from "../controls/element";
import { longList } from "../controls/long-list";
import { paragraph } from "../controls/paragraph";
import { sentenceNodes } from "../controls/sentence-nodes";
import { userText, wholeText } from "../controls/user-text";
import type { SidebarContext } from "../section";

/** So many rows lead to their cells at once; more would bury what stands below. */
const SHOWN_AT_FIRST = 5;

/** A trouble: buttons that lead to its cells, what was found, what happens, what to do. */
export function troubleItem({ call, status }: SidebarContext, row: CheckRow): HTMLElement {
  const { trouble, found, whatHappens, whatToDo, rows, plants, column, tab } = row;
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
    if (rows.length < 2) {
      const label = cellLabel(only, column);
      const place =
        label === null ? paragraph(element("strong", {}, ...elsewhere(tab))) : link(only, label);
      return plants === null ? place : element("div", {}, place, " ", text.plants({ plants }));
    }
    const rowLink = (at: number) => link(at, element("span", {}, text.row({ row: String(at) })));
    const more = rows.slice(SHOWN_AT_FIRST);
    return element(
      "div",
      {},
      element(
        "div",
        {},
        column === "" ? null : element("strong", {}, userText(column), " "),
        text.severalRows({ rows: rows.length, plants: plants ?? 0 }),
      ),
      element("div", { class: "buttons" }, ...rows.slice(0, SHOWN_AT_FIRST).map(rowLink)),
      more.length === 0
        ? null
        : disclosure({
            kind: "more-rows",
            open: false,
            summary: text.moreRows({ rows: more.length }),
            content: () => longList(more, rowLink),
          }),
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

/** What a trouble is about that stands in no cell of the records. */
function elsewhere(tab: string | null): readonly Child[] {
  return tab === null ? [text.wholeTable()] : sentenceNodes(text.tab, { tab: userText(tab) });
}

/** Where the trouble is; null where it is about the whole table. */
function cellLabel(row: number | null, column: string): HTMLElement | null {
  const at = String(row);
  if (column === "") return row === null ? null : element("span", {}, text.row({ row: at }));
  const say = (header: { readonly column: string }) =>
    row === null ? text.column(header) : text.rowColumn({ row: at, ...header });
  return element("span", {}, ...sentenceNodes(say, { column: userText(column) }));
}
