import { cellText, type Grid, isBlank } from "../cells";
import type { TableArea } from "./find-tables";

/** Where a column's values stand for the rows below them. */
export interface FilledDown {
  /** The row that a row's value stands in; the row itself when it has its own, or none above. */
  rowFor(row: number): number;
  readonly filled: number;
}

export interface ColumnPart {
  readonly area: TableArea;
  readonly column: number;
  /** Whether a row holds a batch; headings, sums and blank rows do not. */
  isBatch(row: number): boolean;
  /** A row without a name may be one of sums. */
  isNamed(row: number): boolean;
  /** Whether a blank in a row can't be meant to be filled. */
  isOwn?(row: number): boolean;
}

/**
 * Finds whether a column has the habit of merged cells: a value in the first row of a group, blanks
 * below. The whole column must show it, over all tables of the range: the first row of each is
 * filled, more rows are blank than filled, and no value is written twice running, unless something
 * else stands between.
 */
export function filledDown(grid: Grid, parts: readonly ColumnPart[]): FilledDown | "maybe" | null {
  const sources = new Map<number, number>();
  let filled = 0;
  let values = 0;
  for (const { area, column, isBatch, isNamed, isOwn } of parts) {
    let before = "";
    let source: number | null = null;
    for (let row = area.firstRow; row < area.endRow; row += 1) {
      if (!isBatch(row)) {
        before = "";
        continue;
      }
      if (!isBlank(grid.at(row, column))) {
        const text = cellText(grid.at(row, column));
        if (text === before) return null;
        before = text;
        source = row;
        values += 1;
      } else {
        if (!isNamed(row)) before = "";
        if (source === null || isOwn?.(row)) return null;
        sources.set(row, source);
        filled += 1;
      }
    }
  }
  if (filled === 0) return null;
  if (values < 2 || filled <= values) return "maybe";
  return { rowFor: (row) => sources.get(row) ?? row, filled };
}
