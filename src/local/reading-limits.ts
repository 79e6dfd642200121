import type { ICellData } from "@univerjs/core";
import * as text from "../sentences/made/file-faults";
import { LONGEST_TEXT, MOST_CELLS, MOST_CHARACTERS, MOST_COLUMNS, MOST_ROWS } from "./file-limits";
import { PersonError } from "./person-error";

/** Counts what is read of one file and refuses what is too much. */
export interface ReadingLimits {
  /**
   * A filled cell; row and column count from 0. @param tab null where the file is one table
   * @throws PersonError when the file holds more than is read
   */
  cell(
    tab: string | null,
    at: { readonly row: number; readonly column: number },
    cell: ICellData,
  ): void;
}

/** @param file its name, for the message */
export function readingLimits(file: string): ReadingLimits {
  let cells = 0;
  let characters = 0;
  return {
    cell(tab, { row, column }, cell) {
      const at = { file, where: tab === null ? "file" : "tab", tab: tab ?? "" } as const;
      if (row >= MOST_ROWS) {
        throw new PersonError(text.tooLong({ ...at, row: row + 1, most: MOST_ROWS }));
      }
      if (column >= MOST_COLUMNS) {
        throw new PersonError(text.tooWide({ ...at, column: column + 1, most: MOST_COLUMNS }));
      }
      const length = typeof cell.v === "string" ? cell.v.length : 0;
      if (length > LONGEST_TEXT) {
        throw new PersonError(text.longText({ ...at, row: row + 1, most: LONGEST_TEXT }));
      }
      cells += 1;
      if (cells > MOST_CELLS) {
        throw new PersonError(text.tooManyCells({ file, most: MOST_CELLS }));
      }
      characters += length + (cell.f?.length ?? 0);
      if (characters > MOST_CHARACTERS) {
        throw new PersonError(text.tooManyCharacters({ file, most: MOST_CHARACTERS }));
      }
    },
  };
}

/**
 * Rows down to the last value and up to the column of the last value: a cell with a border, or a
 * stray space, far outside the table would make the tab as large as it can be.
 */
export function withoutBlankEnd(
  rows: readonly (readonly (ICellData | undefined)[])[],
): (readonly (ICellData | undefined)[])[] {
  let width = 0;
  let end = 0;
  rows.forEach((row, at) => {
    const filled = filledWidth(row);
    if (filled > 0) end = at + 1;
    width = Math.max(width, filled);
  });
  return rows.slice(0, end).map((row) => (row.length > width ? row.slice(0, width) : row));
}

function filledWidth(row: readonly (ICellData | undefined)[]): number {
  let width = row.length;
  while (width > 0 && !isFilled(row[width - 1])) width -= 1;
  return width;
}

/** Whether a cell says anything: blanks and spaces alone do not. */
export function isFilled(cell: ICellData | undefined): cell is ICellData {
  if (!cell) return false;
  if (cell.f) return true;
  return typeof cell.v === "string"
    ? cell.v.trim() !== ""
    : cell.v !== undefined && cell.v !== null;
}
