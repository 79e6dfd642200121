import {
  builtInTimetable,
  type CivilDay,
  cellText,
  civilDay,
  type Grid,
  InputError,
  orderTable,
  type Records,
  readRecords,
  type Trouble,
  targetKey,
} from "../../core";
import { priceTable } from "../../core/costs/read-prices";
import { placeTable } from "../../core/places/read-places";
import type { BesideRead } from "../../core/tables";
import { crewTable } from "../../core/work/crew-table";
import { closedTable } from "../../core/work/read-closed-days";
import { decimalMark } from "../../door/decimal-mark";
import { localeOrder } from "../../door/locale-order";

/** What the product made of one column. */
export interface ColumnRead {
  /** Its key, as in meanings.ts; null where it is left alone. */
  readonly key: string | null;
  /** The person is asked what it is. */
  readonly asked: boolean;
  /** It is named as left alone. */
  readonly named: boolean;
}

/** A day on which the corpus's tables may be read. */
export const AS_OF = civilDay(2026, 11, 28) as CivilDay;
const TIMETABLE = builtInTimetable();

/** Troubles by which BATCH_CHECK asks about a whole column. */
const ASKS: ReadonlySet<Trouble["code"]> = new Set(["column-open"]);
/** Those by which it names one that it leaves alone. */
const NAMES: ReadonlySet<Trouble["code"]> = new Set(["columns-alike", "column-left"]);

/**
 * How the columns of a table of some kind are read, from the left; as many as the table has.
 *
 * @param kind of the corpus: "records", "log", "orders" ...
 */
export function columnsRead(kind: string, grid: Grid, locale: string): readonly ColumnRead[] {
  const columns = Array.from({ length: grid.columnCount }, (_, column) => column);
  if (kind === "records" || kind === "log") {
    const records = recordsIn(grid, locale);
    return columns.map((column) => (records === null ? REFUSED : recordsColumn(records, column)));
  }
  const table = smallTable(kind, grid);
  if (table === null) return columns.map(() => REFUSED);
  const named = (list: BesideRead<string>["unread"]) => new Set(list.map(({ header }) => header));
  const [unread, guessed] = [named(table.unread), named(table.guessed)];
  return columns.map((column) => {
    const key =
      [...table.columnsOf].find(([, at]) => at.includes(column))?.[0] ??
      (table.notes.includes(column) ? "note" : null);
    const header = cellText(grid.at(table.headerRow, column));
    return { key, asked: guessed.has(header), named: unread.has(header) };
  });
}

/** A table that is refused is so in a sentence that says what it lacks: nothing of it is read or silent. */
const REFUSED: ColumnRead = { key: null, asked: true, named: false };

/** A records table as the functions read it without a timetable of its own; null where it is refused. */
export function recordsIn(grid: Grid, locale: string, timetable = TIMETABLE): Records | null {
  try {
    return readRecords(grid, {
      stepNames: timetable.methods.flatMap(({ steps }) => steps.map(({ name }) => name)),
      told: new Map(),
      asOf: AS_OF,
      localeOrder: localeOrder(locale),
      decimalMark: decimalMark(locale),
    });
  } catch (error) {
    if (error instanceof InputError) return null;
    throw error;
  }
}

function recordsColumn({ columns, troubles }: Records, column: number): ColumnRead {
  const match = columns.find((one) => one.column === column);
  if (match === undefined) return { key: null, asked: false, named: false };
  const said = (codes: ReadonlySet<Trouble["code"]>) =>
    troubles.some((one) => one.row === null && one.column === match.header && codes.has(one.code));
  return {
    key: match.target === null ? null : targetKey(match.target),
    asked: said(ASKS),
    // What take rates are compared by is used, though no column of ours bears its name.
    named: said(NAMES) || match.scionsCut === true,
  };
}

type Columns = Pick<BesideRead<string>, "headerRow" | "columnsOf" | "notes" | "unread" | "guessed">;

function smallTable(kind: string, grid: Grid): Columns | null {
  if (kind === "orders") return orderTable(grid);
  if (kind === "crew") return crewTable(grid);
  if (kind === "closed days") return closedTable(grid);
  if (kind === "places") return placeTable(grid);
  if (kind === "prices") return priceTable(grid);
  throw new Error(`the corpus has a kind of table that is not scored: ${kind}`);
}
