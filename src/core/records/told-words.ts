import { type Cell, cellText, type Grid } from "../cells";
import { InputError } from "../faults";
import { madeOnce } from "../made-once";
import { foldName } from "../names";
import { type BesideTable, besideOf } from "../tables";
import { normalText, wordSet } from "../words";
import { isLeaveAlone } from "./target-names";

/** Columns of a table of told words. The third is read back and may be blank: a format, in no language. */
export const TOLD_HEADER = ["Our name", "Your word", "What it is"] as const;
/** The header of older tables, which had two columns. */
export const OLDER_TOLD_HEADER = ["Our column", "Header in your sheet"] as const;
/** What a row may tell of; a blank is a header. */
export const TOLD_AS = {
  header: "header",
  value: "value",
  notSame: "not the same",
  tab: "tab",
} as const;
export type ToldAs = (typeof TOLD_AS)[keyof typeof TOLD_AS];

/** Stands for a tab where there is to be none: a format, in no language. */
export const NO_TAB = "no tab";

/** What a person has told of the words in their tables. */
export interface Told {
  /** Our column name by the header in the sheet. */
  readonly headers: ReadonlyMap<string, string>;
  /** Our name by the folded word that cells say for it. */
  readonly values: ReadonlyMap<string, string>;
  /** Near-alike names that are two, each pair as `pairKey` makes it. */
  readonly notSame: ReadonlySet<string>;
  /** Of each other table our column name by the header in normal form ("Orders: Wanted"); "" to leave it alone. */
  readonly tableHeaders: ReadonlyMap<BesideTable, ReadonlyMap<string, string>>;
  /** In which tab each of them stands; NO_TAB where it stands in none. */
  readonly tabs: ReadonlyMap<BesideTable, string>;
}

/** What a batch's cells say of how it is raised; empty where blank. */
export interface MethodTold {
  readonly method: string;
  readonly crop: string;
}

/** The same, as cells are read by it; see toldWords in timetable/. */
export interface ToldWords {
  /** Our name for a word; the word itself where nothing was told of it. */
  nameOf(word: string): string;
  methodOf(texts: MethodTold): MethodTold;
  /** Whether a word was told to be left alone: nothing is asked of it again. */
  isLeftAlone(word: string): boolean;
  /** Whether two names were told to be two, however near they are. */
  isApart(one: string, other: string): boolean;
}

/**
 * Reads a table of told words: our name, the person's word, and what it is. Blank rows are passed over,
 * and so is its own header.
 *
 * @throws InputError "columns-unreadable" | "told-as-unknown"
 */
export function readTold(grid: Grid): Told {
  const headers = new Map<string, string>();
  const values = new Map<string, string>();
  const notSame = new Set<string>();
  const tableHeaders = new Map<BesideTable, Map<string, string>>();
  const tabs = new Map<BesideTable, string>();
  for (let row = 0; row < grid.rowCount; row += 1) {
    const [name, word] = [grid.at(row, 0), grid.at(row, 1)];
    if (name === "" && word === "") continue;
    if (row === 0 && isToldHeader(name, word)) continue;
    const what = grid.at(row, 2);
    const as = toldAs(what);
    if (as === null) {
      throw new InputError({ code: "told-as-unknown", word: cellText(word), found: what });
    }
    // A bench may be called 12 and nothing else; a header is no number.
    const isName = (cell: Cell) =>
      typeof cell === "string" || (as !== TOLD_AS.header && typeof cell === "number");
    if (!isName(name) || !isName(word) || word === "" || (name === "" && as !== TOLD_AS.header)) {
      throw new InputError({ code: "columns-unreadable", name, header: word });
    }
    const ofTable = as === TOLD_AS.header ? columnOfTable(String(name), String(word)) : null;
    if (ofTable !== null) {
      const told = madeOnce(tableHeaders, ofTable.table, () => new Map<string, string>());
      told.set(normalText(String(word)), ofTable.column);
    } else if (as === TOLD_AS.tab) {
      const table = besideOf(cellText(name));
      if (table === null) throw new InputError({ code: "columns-unreadable", name, header: word });
      tabs.set(table, cellText(word));
    } else if (as === TOLD_AS.header) headers.set(String(word), String(name));
    else if (as === TOLD_AS.value) values.set(foldName(cellText(word)), cellText(name));
    else notSame.add(pairKey(cellText(name), cellText(word)));
  }
  return { headers, values, notSame, tableHeaders, tabs };
}

/** How the columns of the tables beside the records are named: "Orders: Wanted". A format, in no language. */
const TABLE_COLUMN = /^([^:]+):\s*(.+)$/;

const TABLE_HEADERS = wordSet(({ tables, name, from, facts }) => [
  ...Object.values(tables).flatMap((one) => Object.values(one).flat()),
  ...facts.batch,
  ...[name, from, facts.place, facts.eventPerson, facts.crop, facts.method].flat(),
]);

/** Whether our name for a header is that of a column of another table. */
export function isOfTable(name: string): boolean {
  return besideOf(TABLE_COLUMN.exec(name)?.[1] ?? "") !== null;
}

/** Null where it is a column of the records. @throws InputError "columns-unreadable" where it is none of the table's */
function columnOfTable(
  name: string,
  header: string,
): { readonly table: BesideTable; readonly column: string } | null {
  const [, said = "", column = ""] = TABLE_COLUMN.exec(name) ?? [];
  const table = besideOf(said);
  if (table === null) return null;
  const isLeft = isLeaveAlone(column);
  if (isLeft || TABLE_HEADERS.has(normalText(column)))
    return { table, column: isLeft ? "" : column };
  throw new InputError({ code: "columns-unreadable", name, header });
}

/** What the third column of a row says; null where that is nothing we know. */
export function toldAs(what: unknown): ToldAs | null {
  const said = normalText(String(what));
  return said === ""
    ? TOLD_AS.header
    : (Object.values(TOLD_AS).find((one) => normalText(one) === said) ?? null);
}

export function isToldHeader(name: unknown, word: unknown): boolean {
  return [TOLD_HEADER, OLDER_TOLD_HEADER].some((one) => name === one[0] && word === one[1]);
}

/** Two names in whichever order. */
export function pairKey(one: string, other: string): string {
  return [foldName(one), foldName(other)].sort().join("\n");
}
