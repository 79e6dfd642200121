import * as text from "../../sentences/made/set-up-page";
import type { ColumnChoice, ColumnGuess, ColumnsAnswer } from "../../wire/set-up";
import { countText } from "../controls/count-words";
import { element } from "../controls/element";
import { group } from "../controls/group";
import { paragraph } from "../controls/paragraph";
import { isolated } from "../controls/shortened";
import type { PeopleShown } from "../people/people-shown";
import { columnGroups, readTwice } from "./column-groups";
import { type ColumnItem, columnItem } from "./column-item";
import { essentials } from "./essentials";
import { lostColumnsNote } from "./lost-columns";

export interface ColumnsForm {
  readonly element: HTMLElement;
  /** Whether nothing essential is missing, or the person said that the tabs may be made without. */
  agreed(): boolean;
  /** What the person changed, and nothing else. */
  changes(): readonly ColumnChoice[];
}

/**
 * All columns of a tab, each to be corrected where it was misunderstood.
 *
 * Longer than most: one form, whose fields and answers belong together.
 *
 * @param onWords called when a column of which words are asked was changed
 */
export function columnsForm(
  { batches, columns, choices, lost, words, essentials: needed }: ColumnsAnswer,
  people: PeopleShown,
  onWords: () => void,
): ColumnsForm {
  const changed = new Map<number, string | null>();
  const doubled = element("div", { "aria-live": "polite" });
  const items = new Map<number, ColumnItem>();
  const nowOf = ({ column, readAs }: ColumnGuess) =>
    changed.has(column) ? (changed.get(column) ?? null) : readAs;
  const change = (guess: ColumnGuess, readAs: string | null) => {
    const before = nowOf(guess);
    if (readAs === guess.readAs) changed.delete(guess.column);
    else changed.set(guess.column, readAs);
    tell();
    const isOfWords = (one: string | null) => words.columns.includes(one ?? "");
    if (isOfWords(before) || isOfWords(readAs)) onWords();
  };
  const top = essentials({ columns, needed }, (column, readAs) => {
    const guess = columns.find((one) => one.column === column);
    if (guess === undefined) return;
    change(guess, readAs ?? guess.readAs);
    items.get(column)?.show(nowOf(guess));
  });
  const readings = () =>
    columns.map((guess) => ({
      column: guess.column,
      header: guess.header,
      readAs: nowOf(guess),
    }));
  const tell = () => {
    top.show(readings());
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
          ...alike.columns.map((guess) => {
            const item = columnItem({
              guess,
              now: nowOf(guess),
              choices,
              people,
              onChange: (readAs) => change(guess, readAs),
            });
            items.set(guess.column, item);
            return item.element;
          }),
        ),
    }),
  );
  tell();
  const used = columns.filter(({ readAs, sure }) => readAs !== null || sure === "scions").length;
  return {
    element: element(
      "div",
      {},
      paragraph(text.understood({ batches, used, columns: columns.length })),
      top.element,
      lostColumnsNote(text.lost(), lost),
      ...groups,
      doubled,
    ),
    agreed: top.agreed,
    changes: () =>
      columns
        .filter(({ column }) => changed.has(column))
        .map(({ column, header }) => ({ header, readAs: changed.get(column) ?? null })),
  };
}
