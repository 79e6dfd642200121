import { cellText, type Grid } from "../cells";
import { besideName } from "./beside-fields";
import type { BesideRead } from "./beside-table";
import { columnHolds, type Holds } from "./column-holds";
import { filledRows, HEADER_ROWS } from "./headed-table";

/** How a column of a table beside the records is read, for a person to correct. */
export interface BesideColumn {
  /** From 0. */
  readonly column: number;
  /** Our name; null where nothing uses it. */
  readonly readAs: string | null;
  /** Whether it is read for what stands in it alone. */
  readonly guessed: boolean;
  /** What it might be where it is not read; our name. */
  readonly maybe: string | null;
  readonly holds: Holds;
}

/** Where a table's columns stand, by field. */
export type BesideFound = Pick<
  BesideRead<string>,
  "headerRow" | "columnsOf" | "unread" | "guessed"
>;

/**
 * Every column that has a header.
 *
 * @param found null where it is no such table as yet: its columns are to be told
 */
export function besideColumns(
  grid: Grid,
  found: BesideFound | null,
): { readonly headerRow: number; readonly columns: readonly BesideColumn[] } {
  const headerRow = found?.headerRow ?? likelyHeader(grid);
  const rows = filledRows(grid, headerRow + 1);
  const fieldAt = new Map<number, string>();
  for (const [field, columns] of found?.columnsOf ?? []) {
    for (const column of columns) fieldAt.set(column, field);
  }
  const columns: BesideColumn[] = [];
  for (let column = 0; column < grid.columnCount; column += 1) {
    const header = cellText(grid.at(headerRow, column));
    const field = fieldAt.get(column);
    const holds = columnHolds(grid, column, rows);
    if (header === "" && holds === "blank") continue;
    const maybe = found?.unread.find((one) => one.header === header)?.field ?? null;
    columns.push({
      column,
      readAs: field === undefined ? null : besideName(field),
      guessed: found?.guessed.some((one) => one.header === header) ?? false,
      maybe: maybe === null ? null : besideName(maybe),
      holds,
    });
  }
  return { headerRow, columns };
}

/** The first row with two names or more; the first where none has. */
function likelyHeader(grid: Grid): number {
  for (let row = 0; row < Math.min(HEADER_ROWS, grid.rowCount); row += 1) {
    let texts = 0;
    for (let column = 0; column < grid.columnCount; column += 1) {
      const cell = grid.at(row, column);
      if (typeof cell === "string" && cell !== "") texts += 1;
    }
    if (texts > 1) return row;
  }
  return 0;
}
