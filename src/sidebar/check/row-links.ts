import * as text from "../../sentences/made/check-page";
import { actionButton } from "../controls/action-button";
import { disclosure } from "../controls/disclosure";
import { type Child, element } from "../controls/element";
import { longList } from "../controls/long-list";
import { sentenceNodes } from "../controls/sentence-nodes";
import { userText } from "../controls/user-text";
import type { SidebarContext } from "../section";

/** So many rows lead to their cells at once; more would bury what stands below. */
const SHOWN_AT_FIRST = 5;

/** A row, and the column of its cell: "" for the whole row. A row of null is the column's header, or another tab. */
export interface Place {
  readonly tab?: string;
  readonly row: number | null;
  readonly column: string;
}

/** A button that selects a cell in the sheet, and tells which. */
export function placeLink({ call, status }: SidebarContext, at: Place, label: Child): HTMLElement {
  return actionButton({
    label,
    status,
    doing: text.going(),
    work: async () => {
      const { selected } = await call("sidebarSelect", at);
      status.say(...sentenceNodes(text.selected, { cell: userText(selected) }));
    },
  });
}

/** A button for each row, of many the first ones at once. */
export function rowLinks(context: SidebarContext, places: readonly Place[]): HTMLElement {
  const link = (at: Place) => placeLink(context, at, text.row({ row: String(at.row) }));
  const more = places.slice(SHOWN_AT_FIRST);
  return element(
    "div",
    {},
    element("div", { class: "buttons" }, ...places.slice(0, SHOWN_AT_FIRST).map(link)),
    more.length === 0
      ? null
      : disclosure({
          kind: "more-rows",
          open: false,
          summary: text.moreRows({ rows: more.length }),
          content: () => longList(more, link),
        }),
  );
}
