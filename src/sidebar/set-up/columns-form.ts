import * as text from "../../sentences/made/set-up-page";
import type { ColumnChoice, ColumnGuess } from "../../wire/columns";
import type { ColumnsAnswer } from "../../wire/set-up";
import { columnLetter } from "../controls/column-letter";
import { countText } from "../controls/count-words";
import { unfold } from "../controls/disclosure";
import { element } from "../controls/element";
import { group } from "../controls/group";
import { paragraph } from "../controls/paragraph";
import { isolated } from "../controls/shortened";
import type { PeopleShown } from "../people/people-shown";
import { stateOf } from "../state";
import { columnGroups, isOpen, readTwice } from "./column-groups";
import { type ColumnItem, type ColumnSaid, columnItem } from "./column-item";
import { essentials } from "./essentials";
import { lostColumnsNote } from "./lost-columns";

export interface ColumnsForm {
  /** How much is read, and whether what answers need is. */
  readonly head: HTMLElement;
  /** The columns that were guessed, each a question. */
  readonly asked: readonly HTMLElement[];
  /** The other columns, which may be changed and need not be. */
  readonly others: HTMLElement;
  /** Our names of the columns that answers need and that are not known by now. */
  missing(): readonly string[];
  /** What the person said, and nothing else. */
  changes(): readonly ColumnChoice[];
  /** Where a column stands, in an opened group; null where there is none of that header. */
  item(header: string): HTMLElement | null;
}

interface Options {
  readonly people: PeopleShown;
  /** What was said and not yet used when the table was read before. */
  readonly kept: readonly ColumnChoice[];
  /** A column of which words are asked is read otherwise. */
  readonly onWords: () => void;
  readonly onChange: () => void;
}

/**
 * All columns of a tab, each to be corrected where it was misunderstood.
 *
 * Longer than most: one form, whose fields and answers belong together.
 */
export function columnsForm(
  { batches, columns, choices, lost, words, essentials: needed }: ColumnsAnswer,
  { people, kept, onWords, onChange }: Options,
): ColumnsForm {
  const state = stateOf<{ missing: readonly string[] }>({ missing: [] });
  const said = new Map<number, ColumnSaid>();
  for (const { column, header } of columns) {
    const before = kept.find((one) => one.header === header);
    if (before !== undefined && header !== "") said.set(column, before.readAs);
  }
  const doubled = element("div", { "aria-live": "polite" });
  const items = new Map<number, ColumnItem>();
  const nowOf = ({ column, readAs }: ColumnGuess) => {
    const now = said.get(column);
    return now === undefined ? readAs : now;
  };
  const say = (guess: ColumnGuess, now: ColumnSaid | undefined) => {
    const before = nowOf(guess);
    if (now === undefined) said.delete(guess.column);
    else said.set(guess.column, now);
    tell();
    onChange();
    const isOfWords = (one: string | null) => words.columns.includes(one ?? "");
    const after = nowOf(guess);
    if (before !== after && (isOfWords(before) || isOfWords(after))) onWords();
  };
  const top = essentials({ columns, needed }, (column, readAs) => {
    const guess = columns.find((one) => one.column === column);
    if (guess === undefined) return;
    const isAsBefore = readAs === null || (readAs === guess.readAs && !isOpen(guess));
    say(guess, isAsBefore ? undefined : readAs);
    items.get(column)?.show(said.get(column));
  });
  const readings = () =>
    columns.map((guess) => ({
      column: guess.column,
      header: guess.header,
      readAs: nowOf(guess),
      isGuess: isOpen(guess) && !said.has(guess.column),
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
  const itemOf = (guess: ColumnGuess) => {
    const item = columnItem({
      guess,
      said: said.get(guess.column),
      choices,
      people,
      onSay: (now) => say(guess, now),
    });
    items.set(guess.column, item);
    return item.element;
  };
  const asked = columns.filter(isOpen).map(itemOf);
  const groups = columnGroups(columns).map((alike) => ({
    columns: alike.columns,
    element: group({
      title: alike.title,
      tally: countText(alike.columns.length),
      open: alike.open,
      content: () => element("div", {}, ...alike.columns.map(itemOf)),
    }),
  }));
  tell();
  return {
    head: element(
      "div",
      {},
      ...understood(batches, columns),
      top.element,
      lostColumnsNote(text.lost(), lost),
      doubled,
    ),
    asked,
    others: element("div", {}, ...groups.map((one) => one.element)),
    missing: () => state.now.missing,
    changes: () =>
      columns
        .filter(({ column }) => said.has(column))
        .map(({ column, header }) => ({ header, readAs: said.get(column) ?? null })),
    item: (header) => {
      const guess = columns.find((one) => one.header === header);
      if (guess === undefined) return null;
      const folded = groups.find((one) => one.columns.includes(guess));
      if (folded !== undefined) unfold(folded.element);
      return items.get(guess.column)?.element ?? null;
    },
  };
}

/** So many columns that are not used are named. */
const MOST_NAMED = 6;

/** How much of the table is read, and what is not. */
function understood(batches: number, columns: readonly ColumnGuess[]): HTMLElement[] {
  const left = columns.filter(({ readAs, sure }) => readAs === null && sure !== "scions");
  const headers = left.map(({ header, column }) =>
    header === "" ? text.nameless({ letter: columnLetter(column) }) : isolated(header, 30),
  );
  const facts = { batches, columns: columns.length, left: left.length };
  const said = paragraph(text.understood({ ...facts, used: columns.length - left.length }));
  const isNamed = left.length > 0 && left.length <= MOST_NAMED;
  return isNamed ? [said, paragraph(text.notUsed({ headers }))] : [said];
}
