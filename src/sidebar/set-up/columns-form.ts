import * as text from "../../sentences/made/set-up-page";
import type { ColumnChoice, ColumnGuess } from "../../wire/columns";
import type { ColumnsAnswer } from "../../wire/set-up";
import { countText } from "../controls/count-words";
import { element } from "../controls/element";
import { group } from "../controls/group";
import { paragraph } from "../controls/paragraph";
import { isolated } from "../controls/shortened";
import type { PeopleShown } from "../people/people-shown";
import { stateOf } from "../state";
import { columnGroups, readTwice } from "./column-groups";
import { type ColumnItem, columnItem } from "./column-item";
import { essentials } from "./essentials";
import { lostColumnsNote } from "./lost-columns";

export interface ColumnsForm {
  /** What the person is to look at before the tabs are made. */
  readonly asked: HTMLElement;
  /** The other columns, which may be changed and need not be. */
  readonly others: HTMLElement;
  /** Our names of the columns that answers need and that are not known by now. */
  missing(): readonly string[];
  /** What the person changed, and nothing else. */
  changes(): readonly ColumnChoice[];
}

/**
 * All columns of a tab, each to be corrected where it was misunderstood.
 *
 * Longer than most: one form, whose fields and answers belong together.
 *
 * @param on called when a column of which words are asked was changed, and with each change
 */
export function columnsForm(
  { batches, columns, choices, lost, words, essentials: needed }: ColumnsAnswer,
  people: PeopleShown,
  on: { readonly words: () => void; readonly change: () => void },
): ColumnsForm {
  const state = stateOf<{ missing: readonly string[] }>({ missing: [] });
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
    on.change();
    const isOfWords = (one: string | null) => words.columns.includes(one ?? "");
    if (isOfWords(before) || isOfWords(readAs)) on.words();
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
    state.set({ missing: top.show(readings()) });
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
  const groups = columnGroups(columns).map((alike) => ({
    first: alike.first,
    element: group({
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
  }));
  tell();
  const groupsOf = (first: boolean) =>
    groups.filter((one) => one.first === first).map((one) => one.element);
  return {
    asked: element(
      "div",
      {},
      ...understood(batches, columns),
      top.element,
      lostColumnsNote(text.lost(), lost),
      ...groupsOf(true),
      doubled,
    ),
    others: element("div", {}, ...groupsOf(false)),
    missing: () => state.now.missing,
    changes: () =>
      columns
        .filter(({ column }) => changed.has(column))
        .map(({ column, header }) => ({ header, readAs: changed.get(column) ?? null })),
  };
}

/** So many columns that are not used are named. */
const MOST_NAMED = 6;

/** How much of the table is read, and what is not. */
function understood(batches: number, columns: readonly ColumnGuess[]): HTMLElement[] {
  const left = columns.filter(({ readAs, sure }) => readAs === null && sure !== "scions");
  const headers = left.map(({ header, column }) =>
    header === "" ? text.nameless({ column: String(column + 1) }) : isolated(header, 30),
  );
  const facts = { batches, columns: columns.length, left: left.length };
  const said = paragraph(text.understood({ ...facts, used: columns.length - left.length }));
  const isNamed = left.length > 0 && left.length <= MOST_NAMED;
  return isNamed ? [said, paragraph(text.notUsed({ headers }))] : [said];
}
