import type { CellContent } from "./write-log";

/** A cell of the person's own table that is about to be written. */
export interface CellWrite {
  /** From 1. */
  readonly row: number;
  readonly column: number;
  /** Such as "F12". */
  readonly cell: string;
  readonly before: CellContent;
  readonly after: CellContent;
}

/** A cell by which a row or a column is known again: the batch's name, a header. */
export interface Landmark {
  readonly row: number;
  readonly column: number;
  readonly value: unknown;
}

/** What tells whose cells those of a write are. */
export interface TableMarks {
  readonly landmarks: readonly Landmark[];
  /** Rows of the table's header, from 1. */
  readonly headerRows: readonly number[];
  /** The column, from 1, with the names of batches or orders; null where there is none. */
  readonly nameColumn: number | null;
}

/** Cells of one table that belong together. */
export interface WriteGroup extends TableMarks {
  readonly writes: readonly CellWrite[];
}

/** Whether two cell contents are the same; dates by their instant. */
export function sameValue(one: unknown, other: unknown): boolean {
  const plain = (value: unknown) => (value instanceof Date ? value.getTime() : value);
  return plain(one) === plain(other);
}

/**
 * Whether a cell holds what was written, which by its format may be a number or a day as text, text
 * as a number, or a number as a day.
 */
export function isAlike(stands: unknown, after: CellContent): boolean {
  if (sameValue(stands, after)) return true;
  if (after instanceof Date) {
    return typeof stands === "string" && stands.includes(String(after.getFullYear()));
  }
  if (stands instanceof Date) {
    return typeof after === "number" && Math.abs(serialOf(stands) - after) <= 1;
  }
  return String(stands) === String(after);
}

/** Days since 30 Dec 1899, give or take the zone. */
function serialOf(day: Date): number {
  return day.getTime() / 86_400_000 + 25_569;
}
