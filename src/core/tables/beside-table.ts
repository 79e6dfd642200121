/* Longer than most: a header is settled in five steps, each of which needs the state of the others. */
import { cellText, type Grid, isBlank } from "../cells";
import { lazily } from "../lazily";
import { everyWord, longestBeginning, normalText, wordSet } from "../words";
import {
  type BesideTable,
  type FieldRule,
  fieldRules,
  hasUnknownWord,
  headerSays,
} from "./beside-fields";
import { allDiffer, columnHolds, type Holds } from "./column-holds";
import {
  filledRows,
  HEADER_ROWS,
  type HeadedTable,
  headedTable,
  knownColumns,
  tableAt,
} from "./headed-table";
import type { ColumnInDoubt } from "./row-trouble";

/** A small table of a stranger: beside known headers, others are read by their words and by what is in them. */
export interface BesideRead<Field extends string> extends HeadedTable<Field> {
  /** Of fields of which several columns are read, all of them, from the left. */
  readonly columnsOf: ReadonlyMap<Field, readonly number[]>;
  /** Columns that hold something and are not read, notes aside. */
  readonly unread: readonly ColumnInDoubt<Field>[];
  /** Columns of notes, which nothing uses. */
  readonly notes: readonly number[];
  /** Read by their cells, since their headers say nothing that is known. */
  readonly guessed: readonly ColumnInDoubt<Field>[];
}

/** What is looked for in a table. */
export interface Wanted<Field extends string> {
  readonly kind: BesideTable;
  /** Known headers by field, in normal form. */
  readonly words: Readonly<Record<Field, readonly string[]>>;
  /** Without these it is no such table. */
  readonly required: readonly NoInfer<Field>[];
  /** Fields of which several columns are read together. */
  readonly several?: ReadonlySet<NoInfer<Field>>;
  /** Only what headers say counts, where it is asked whether a tab holds such a table at all. */
  readonly byWordsAlone?: boolean | undefined;
}

const NOTES = wordSet(({ facts }) => facts.note);
/** "Rmks", "Keterangan", "Observaciones": words that say so in the headers of records. */
const noteWords = lazily(
  () => new Map(everyWord(({ parts }) => parts.note).map((word) => [word, true])),
);

/** Finds a table by its known headers, else by the words in its headers and what its columns hold. */
export function besideTable<Field extends string>(
  grid: Grid,
  wanted: Wanted<Field>,
): BesideRead<Field> | null {
  const plain = headedTable(grid, wanted.words, wanted.required);
  const plainly = plain === null ? null : readAt(grid, plain.headerRow, wanted);
  if (plainly !== null) return plainly;
  let best: { readonly read: BesideRead<Field>; readonly found: number } | null = null;
  for (let row = 0; row < Math.min(HEADER_ROWS, grid.rowCount - 1); row += 1) {
    if (!isHeaderLike(grid, row)) continue;
    const read = readAt(grid, row, wanted);
    const found = read === null ? 0 : Object.keys(read.columnOf).length * 2 - read.guessed.length;
    if (read !== null && found > (best?.found ?? 0)) best = { read, found };
  }
  return best?.read ?? null;
}

/** A header names at least two columns, and holds neither days nor numbers. */
function isHeaderLike(grid: Grid, row: number): boolean {
  let names = 0;
  for (let column = 0; column < grid.columnCount; column += 1) {
    const cell = grid.at(row, column);
    if (isBlank(cell)) continue;
    if (typeof cell !== "string" || columnHolds(grid, column, [row]) !== "text") return false;
    names += 1;
  }
  return names >= 2;
}

interface Column {
  readonly column: number;
  readonly header: string;
  readonly holds: Holds;
  readonly says: ReturnType<typeof headerSays>;
}

/** The columns of a table while it is settled what each of them is. */
interface Settling<Field extends string> {
  readonly columns: readonly Column[];
  readonly columnOf: Partial<Record<Field, number>>;
  readonly fieldAt: Map<number, Field>;
  /** Columns that are nothing as yet. */
  free(): readonly Column[];
  take(field: Field, column: number): void;
  drop(field: Field): void;
  holdsOf(field: Field): ReadonlySet<Holds>;
  /** Whether it is a column of that field by its words and cells; of any where none is named. */
  fits(column: Column, field?: Field): boolean;
}

function readAt<Field extends string>(
  grid: Grid,
  headerRow: number,
  wanted: Wanted<Field>,
): BesideRead<Field> | null {
  const { kind, words, several, required } = wanted;
  const rules = fieldRules<Field>(kind);
  const rows = filledRows(grid, headerRow + 1);
  const settling = settlingAt(grid, {
    headerRow,
    rows,
    rules,
    columnOf: knownColumns(grid, headerRow, words),
  });
  const { columnOf, fieldAt, free, take } = settling;
  yieldToBetter(settling, required);
  for (const { column, header } of free()) {
    const known = normalText(header).replace(/ ?\d+$/, "");
    const field = [...(several ?? [])].find((one) => words[one].includes(known));
    if (field !== undefined) take(field, column);
  }
  for (const rule of rules) {
    for (const { column, header, says, holds } of free()) {
      const isFree = columnOf[rule.field] === undefined || several?.has(rule.field) === true;
      // "Leave zorv" over days may be where it begins or where it ends.
      const mayBeEnd = isAway(rule) && holds === "day" && hasUnknownWord(header);
      if (isFree && !mayBeEnd && !isNote(header) && ruleFits(rule, says, holds)) {
        take(rule.field, column);
      }
    }
  }
  const guessed = takenByCells(settling, wanted, (column) => allDiffer(grid, column, rows));
  if (guessed === null) return null;
  const columnsOf = new Map<Field, number[]>();
  for (const [column, field] of [...fieldAt].sort(([one], [other]) => one - other)) {
    columnsOf.set(field, [...(columnsOf.get(field) ?? []), column]);
  }
  const left = free().filter(({ header, holds }) => header !== "" && holds !== "blank");
  return {
    ...tableAt(grid, headerRow, columnOf),
    columnsOf,
    notes: left.filter(({ header }) => isNote(header)).map(({ column }) => column),
    unread: left
      .filter(({ header }) => !isNote(header))
      .map((one) => ({ header: one.header, field: likely(one, rules, columnOf) })),
    guessed,
  };
}

function settlingAt<Field extends string>(
  grid: Grid,
  {
    headerRow,
    rows,
    rules,
    columnOf,
  }: {
    readonly headerRow: number;
    readonly rows: readonly number[];
    readonly rules: readonly FieldRule<Field>[];
    readonly columnOf: Partial<Record<Field, number>>;
  },
): Settling<Field> {
  const columns: Column[] = [];
  for (let column = 0; column < grid.columnCount; column += 1) {
    const header = cellText(grid.at(headerRow, column));
    const holds = columnHolds(grid, column, rows);
    if (header !== "" || holds !== "blank") {
      columns.push({ column, header, holds, says: headerSays(header) });
    }
  }
  const known = Object.entries(columnOf) as [Field, number][];
  const fieldAt = new Map(known.map(([field, column]) => [column, field] as const));
  const rulesOf = (field: Field) => rules.filter((rule) => rule.field === field);
  return {
    columns,
    columnOf,
    fieldAt,
    free: () => columns.filter(({ column }) => !fieldAt.has(column)),
    take: (field, column) => {
      columnOf[field] ??= column;
      fieldAt.set(column, field);
    },
    drop: (field) => {
      fieldAt.delete(columnOf[field] as number);
      delete columnOf[field];
    },
    holdsOf: (field) => new Set(rulesOf(field).flatMap(({ holds }) => holds)),
    fits: ({ says, holds }, field) =>
      (field === undefined ? rules : rulesOf(field)).some((rule) => ruleFits(rule, says, holds)),
  };
}

/** Known words give way to what is seen below them. */
function yieldToBetter<Field extends string>(
  { columns, columnOf, fieldAt, free, take, drop, holdsOf, fits }: Settling<Field>,
  required: readonly Field[],
): void {
  // A known word over cells of another kind, where a column of the right kind is free.
  for (const { column, holds } of columns) {
    const field = fieldAt.get(column);
    if (field === undefined || holds === "blank") continue;
    const kinds = holdsOf(field);
    if (kinds.size === 0 || kinds.has(holds)) continue;
    const better = free().some(
      (one) => fits(one, field) || (kinds.has("day") && one.holds === "day" && !fits(one)),
    );
    if (better || (holds === "day" && !required.includes(field))) drop(field);
  }
  // "Nbre commandé" names an order, until it is seen that nothing else says how many.
  for (const field of required.filter((one) => columnOf[one] === undefined)) {
    if (free().some((one) => fits(one, field))) continue;
    const may = columns.filter((one) => {
      const known = fieldAt.get(one.column);
      return known !== undefined && !required.includes(known) && fits(one, field);
    });
    if (may.length !== 1) continue;
    const { column } = may[0] as Column;
    drop(fieldAt.get(column) as Field);
    take(field, column);
  }
}

/** What can't be one of our numbers or names, whatever it holds. */
const NONE_OF_OURS = ["aside", "owed", "price"] as const;

/** Fields that must be there, taken by what stands in the one column that may be meant; null where they can't be. */
function takenByCells<Field extends string>(
  { columnOf, fieldAt, free, take, holdsOf }: Settling<Field>,
  { required, byWordsAlone = false }: Wanted<Field>,
  differ: (column: number) => boolean,
): readonly ColumnInDoubt<Field>[] | null {
  const guessed: ColumnInDoubt<Field>[] = [];
  const missing = required.filter((field) => columnOf[field] === undefined);
  if (missing.length > 0 && (byWordsAlone || fieldAt.size + missing.length < 2)) return null;
  for (const field of missing) {
    const fitting = free().filter(
      ({ column, holds, says, header }) =>
        header !== "" &&
        holdsOf(field).has(holds) &&
        !NONE_OF_OURS.some((part) => says.has(part)) &&
        (holds !== "text" || differ(column)),
    );
    // Of hours, numbers go before texts.
    const [kind] = holdsOf(field);
    const plain = fitting.filter(({ holds }) => holds === kind);
    const may = plain.length > 0 ? plain : fitting;
    const [first] = may;
    // Names stand on the left.
    if (first === undefined || (may.length > 1 && first.holds !== "text")) return null;
    take(field, first.column);
    guessed.push({ header: first.header, field });
  }
  return guessed;
}

function isNote(header: string): boolean {
  const text = normalText(header);
  const known = noteWords();
  return (
    NOTES.has(text) ||
    (text !== "" &&
      text.split(" ").every((word) => known.has(word) || longestBeginning(known, word, 4) === true))
  );
}

/** The one field that is still wanting of which the column says a word. */
function likely<Field extends string>(
  { says, holds }: Column,
  rules: readonly FieldRule<Field>[],
  columnOf: Partial<Record<Field, number>>,
): Field | null {
  if (says.has("aside") || says.has("owed")) return null;
  const rule = rules.find(
    (one) =>
      columnOf[one.field] === undefined &&
      one.any.some((part) => says.has(part)) &&
      (one.holds.includes(holds) || holds === "text"),
  );
  return rule?.field ?? null;
}

/** Whether a rule is of days off that say neither a first nor a last. */
function isAway({ field, any }: FieldRule): boolean {
  return field === "off" && any.includes("away");
}

function ruleFits<Field extends string>(
  { any, none, holds }: FieldRule<Field>,
  says: Column["says"],
  held: Holds,
): boolean {
  return (
    any.some((part) => says.has(part)) &&
    !none.some((part) => says.has(part)) &&
    (held === "blank" || holds.includes(held))
  );
}
