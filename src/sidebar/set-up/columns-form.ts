import type { ColumnChoice, ColumnsAnswer } from "../../workbook/sidebar-calls";
import { counted, countText, listed } from "../controls/count-words";
import { disclosure } from "../controls/disclosure";
import { element } from "../controls/element";
import { isolated } from "../controls/shortened";
import type { PeopleShown } from "../people/people-shown";
import { columnGroups, readTwice } from "./column-groups";
import { columnItem } from "./column-item";
import { lostColumnsNote } from "./lost-columns";

export interface ColumnsForm {
  readonly element: HTMLElement;
  /** What the person changed, and nothing else. */
  changes(): readonly ColumnChoice[];
}

/** All columns of a tab, each to be corrected where it was misunderstood. */
export function columnsForm(
  { batches, columns, choices, lost }: ColumnsAnswer,
  people: PeopleShown,
): ColumnsForm {
  const changed = new Map<number, string | null>();
  const doubled = element("div", { "aria-live": "polite" });
  const readings = () =>
    columns.map(({ column, header, readAs }) => ({
      header,
      readAs: changed.has(column) ? (changed.get(column) ?? null) : readAs,
    }));
  const tellTwice = () => {
    doubled.replaceChildren(
      ...readTwice(readings()).map(({ readAs, headers }) =>
        element(
          "p",
          { class: "note" },
          `${headers.length} columns are read as ${isolated(readAs)}: ${listed(headers.map((one) => isolated(one)))}. Is one of them to be left alone?`,
        ),
      ),
    );
  };
  const groups = columnGroups(columns).map((group) =>
    disclosure({
      kind: "group",
      open: group.open,
      summary: element(
        "h3",
        {},
        `${group.title} `,
        element("span", { class: "tally" }, countText(group.columns.length)),
      ),
      content: () =>
        element(
          "div",
          {},
          ...group.columns.map((guess) =>
            columnItem({
              guess,
              choices,
              people,
              onChange: (readAs) => {
                if (readAs === guess.readAs) changed.delete(guess.column);
                else changed.set(guess.column, readAs);
                tellTwice();
              },
            }),
          ),
        ),
    }),
  );
  tellTwice();
  const used = columns.filter(({ readAs }) => readAs !== null).length;
  return {
    element: element(
      "div",
      {},
      element(
        "p",
        {},
        `${counted(batches, "batch", "batches")}; ${countText(used)} of ${counted(columns.length, "column", "columns")} understood.`,
      ),
      lostColumnsNote(
        "You told this before, but the header or the step is gone; choose again",
        lost,
      ),
      ...groups,
      doubled,
    ),
    changes: () =>
      columns
        .filter(({ column }) => changed.has(column))
        .map(({ column, header }) => ({ header, readAs: changed.get(column) ?? null })),
  };
}
