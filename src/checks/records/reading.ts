import {
  type Answer,
  builtInTimetable,
  type CivilDay,
  checkedRecords,
  civilDay,
  type Grid,
  InputError,
  type Records,
  readRecords,
} from "../../core";
import { decimalMark } from "../../door/decimal-mark";
import { localeOrder } from "../../door/locale-order";
import { checkTable } from "../../wording/check";
import { type LaidOut, laidOut, type Sheet } from "./sheet";

/** What the reader made of a sheet. */
export interface Reading extends LaidOut {
  /** null where the reader refused the whole sheet. */
  readonly records: Records | null;
  /** BATCH_CHECK's rows; for a refused sheet none. */
  readonly listed: readonly Listed[];
  /** The sentence that a refused sheet was refused with. */
  readonly refusal: string | null;
}

/** A row of BATCH_CHECK. */
export interface Listed {
  readonly row: number | null;
  readonly column: string;
  readonly found: string;
  readonly trouble: string;
}

/** The day on which the clean sample is read. */
const AS_OF = civilDay(2026, 11, 25) as CivilDay;
const TIMETABLE = builtInTimetable();
const STEP_NAMES = TIMETABLE.methods.flatMap(({ steps }) => steps.map(({ name }) => name));

/** Reads a sheet as the custom functions do. @throws Error what is no sentence for people */
export function readSheet(sheet: Sheet): Reading {
  const out = laidOut(sheet);
  try {
    const records = readGrid(out.grid, sheet.locale);
    const { rows } = checkTable(
      checkedRecords(records, { timetable: TIMETABLE, faults: [] }, AS_OF),
    );
    return { ...out, records, listed: listedIn(rows), refusal: null };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { ...out, records: null, listed: [], refusal: error.message };
  }
}

/** @throws InputError where the grid can't be read as records */
export function readGrid(grid: Grid, locale: string): Records {
  return readRecords(grid, {
    stepNames: STEP_NAMES,
    asOf: AS_OF,
    localeOrder: localeOrder(locale),
    decimalMark: decimalMark(locale),
    told: new Map(),
  });
}

/** The last row counts rows, and lists nothing; an entry of several rows lists each. */
function listedIn(rows: Answer["rows"]): Listed[] {
  return rows.slice(0, -1).flatMap((cells) => {
    const [row, column, found, trouble] = cells;
    const listed = {
      row: typeof row === "number" ? row : null,
      column: String(column ?? ""),
      found: String(found ?? ""),
      trouble: String(trouble),
    };
    const others = rowsNamed(cells[cells.length - 1]);
    return others.length === 0 ? [listed] : others.map((one) => ({ ...listed, row: one }));
  });
}

/** Rows by their text in the last column of BATCH_CHECK, "4, 7-9". */
export function rowsNamed(text: unknown): number[] {
  return [...String(text ?? "").matchAll(/(\d+)(?:-(\d+))?/g)].flatMap(([, from, to]) => {
    const first = Number(from);
    return Array.from({ length: Number(to ?? from) - first + 1 }, (_, at) => first + at);
  });
}
