import {
  builtInTimetable,
  type Cell,
  type CivilDay,
  checkedRecords,
  civilDay,
  gridOf,
  isoDay,
  type Records,
  readRecords,
} from "../../../../src/core";
import type { Batch } from "../../../../src/core/records/batch";

const TIMETABLE = builtInTimetable();
export const AS_OF = civilDay(2026, 11, 25) as CivilDay;

/** A table typed as a sheet would hold it: ISO days become day cells, the rest stays as it is. */
export function readTyped(rows: readonly (readonly Cell[])[], locale: "day" | "month" = "day") {
  return readRecords(gridOf(rows.map((row) => row.map(typed))), {
    stepNames: TIMETABLE.methods.flatMap(({ steps }) => steps.map(({ name }) => name)),
    asOf: AS_OF,
    localeOrder: locale === "day" ? "day-first" : "month-first",
    decimalMark: ".",
    told: new Map(),
  });
}

function typed(cell: Cell): Cell {
  const iso = typeof cell === "string" ? /^(\d{4})-(\d\d)-(\d\d)$/.exec(cell) : null;
  const day = iso && civilDay(Number(iso[1]), Number(iso[2]), Number(iso[3]));
  return day === null ? cell : { day };
}

export function names({ batches }: Records): string[] {
  return batches.map(({ name }) => name);
}

/** The day of a step as ISO text, by batch; null where there is none. */
export function daysOf(records: Records, step: string): (string | null)[] {
  return valuesOf(records, step, "days").map((day) => (day === null ? null : isoDay(day)));
}

export function countsOf(records: Records, step: string): (number | null)[] {
  return valuesOf(records, step, "counts");
}

function valuesOf<Kind extends "days" | "counts">(
  { batches, stepKeys }: Records,
  step: string,
  kind: Kind,
): (Batch[Kind][number] | null)[] {
  const index = stepKeys.indexOf(step);
  return batches.map((batch) => batch[kind][index] ?? null);
}

/** What BATCH_CHECK lists, a line a trouble: "row | column | which". */
export function listed(records: Records): string[] {
  const { troubles } = checkedRecords(records, { timetable: TIMETABLE, faults: [] }, AS_OF);
  return troubles.map(({ row, column, code }) => `${row} | ${column} | ${code}`);
}

/** Whether something is said of a row, or of a column as a whole. */
export function isSaid(records: Records, where: { row?: number; column?: string }): boolean {
  const { row = null, column } = where;
  return listed(records).some((line) => {
    const [saidRow, saidColumn] = line.split(" | ");
    return saidRow === String(row) && (column === undefined || saidColumn === column);
  });
}
