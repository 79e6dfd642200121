import * as text from "../../sentences/made/set-up-page";
import type { ColumnChoice, ColumnsAnswer } from "../../wire/set-up";
import { countText } from "../controls/count-words";
import { element } from "../controls/element";
import { group } from "../controls/group";
import { paragraph } from "../controls/paragraph";
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

/**
 * All columns of a tab, each to be corrected where it was misunderstood.
 *
 * @param onWords called when a column of which words are asked was changed
 */
export function columnsForm(
  { batches, columns, choices, lost, words }: ColumnsAnswer,
  people: PeopleShown,
  onWords: () => void,
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
          text.readTwice({
            number: headers.length,
            readAs: isolated(readAs),
            headers: headers.map((one) => isolated(one)),
          }),
        ),
      ),
    );
  };
  const groups = columnGroups(columns).map((alike) =>
    group({
      title: alike.title,
      tally: countText(alike.columns.length),
      open: alike.open,
      content: () =>
        element(
          "div",
          {},
          ...alike.columns.map((guess) =>
            columnItem({
              guess,
              choices,
              people,
              onChange: (readAs) => {
                const before = changed.get(guess.column) ?? guess.readAs;
                if (readAs === guess.readAs) changed.delete(guess.column);
                else changed.set(guess.column, readAs);
                tellTwice();
                const isOfWords = (one: string | null) => words.columns.includes(one ?? "");
                if (isOfWords(before) || isOfWords(readAs)) onWords();
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
      paragraph(text.understood({ batches, used, columns: columns.length })),
      lostColumnsNote(text.lost(), lost),
      ...groups,
      doubled,
    ),
    changes: () =>
      columns
        .filter(({ column }) => changed.has(column))
        .map(({ column, header }) => ({ header, readAs: changed.get(column) ?? null })),
  };
}
