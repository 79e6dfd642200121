import type { Cell, DayCell, Grid } from "../core";
import type { DaysOfInstants } from "./days-of-instants";

const QUARTER_HOUR = 900_000;

/**
 * A range as it reaches a function, as a grid of cells. Nothing is copied: a cell is turned into
 * core's kind when it is looked at, since most columns of a wide sheet never are.
 *
 * @param value a scalar, or rows of scalars
 */
export function gridIn(value: unknown, days: DaysOfInstants): Grid {
  const rows = rowsOf(value);
  // Instants on a quarter of an hour, which midnights are in every zone of our time, are looked up
  // by a small whole number: that is several times faster, and wide tables hold a million dates.
  const byQuarter = new Map<number, DayCell>();
  const byInstant = new Map<number, DayCell>();
  const dayCell = (milliseconds: number): DayCell => {
    const quarters = milliseconds / QUARTER_HOUR;
    const key = quarters | 0;
    const known = key === quarters ? byQuarter : byInstant;
    const name = key === quarters ? key : milliseconds;
    let cell = known.get(name);
    if (cell === undefined) {
      cell = { day: days.dayOf(milliseconds) };
      known.set(name, cell);
    }
    return cell;
  };
  return {
    rowCount: rows.length,
    columnCount: widest(rows),
    at: (row, column) => {
      const value = rows[row]?.[column];
      if (typeof value === "string") return value;
      if (typeof value === "number") return value - value === 0 ? value : "#NUM!";
      if (typeof value === "boolean") return value;
      const instant = instantIn(value);
      if (instant === null) return "";
      return instant < FIRST_INSTANT || instant > LAST_INSTANT ? "#NUM!" : dayCell(instant);
    },
  };
}

function widest(rows: readonly (readonly unknown[])[]): number {
  let width = 0;
  for (const { length } of rows) if (length > width) width = length;
  return width;
}

/** A single value as a cell; a range of one cell may arrive as the value or as [[value]]. */
export function cellIn(value: unknown, days: DaysOfInstants): Cell {
  return gridIn(value, days).at(0, 0);
}

/** An argument as rows: a range is an array of rows, a range of one cell may arrive as its value alone. */
export function rowsOf(value: unknown): readonly (readonly unknown[])[] {
  if (!Array.isArray(value)) return [[value]];
  const isRow = (row: unknown) => Array.isArray(row);
  return value.every(isRow) ? value : value.map((row) => (isRow(row) ? row : [row]));
}

/** The instant of a Date. The Date of another realm is no instance of ours, so it is known by what it does. */
function instantIn(value: unknown): number | null {
  if (typeof value !== "object" || value === null) return null;
  if (typeof (value as Date).getTime !== "function") return null;
  const instant = (value as Date).getTime();
  return instant - instant === 0 ? instant : null;
}

/** Years 1 to 9999: what lies outside is no date of a sheet, and its clock can't be read. */
const FIRST_INSTANT = -62_135_596_800_000;
const LAST_INSTANT = 253_402_300_799_999;
