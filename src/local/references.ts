import { utils } from "@e965/xlsx";
import type { SheetDraft } from "./workbook-data";

/** Whole columns of a tab, from A to the last filled one, as a formula names them. */
export function wholeColumns(draft: SheetDraft): string {
  return `${tabReference(draft.name)}!A:${utils.encode_col(filledSize(draft).columns - 1)}`;
}

function filledSize({ rows }: SheetDraft): { readonly columns: number; readonly rows: number } {
  const size = { columns: 1, rows: 1 };
  rows.forEach((row, at) => {
    size.columns = Math.max(size.columns, row.length);
    if (row.some((cell) => cell?.f || (cell?.v ?? "") !== "")) size.rows = at + 1;
  });
  return size;
}

/** The cells of a tab from A1 to its last filled row, as a formula names them. */
export function filledCells(draft: SheetDraft): string {
  const { columns, rows } = filledSize(draft);
  return `${tabReference(draft.name)}!A1:${utils.encode_col(columns - 1)}${rows}`;
}

/**
 * One cell, row and column counted from 0, as a formula names it from another tab.
 *
 * @example oneCell("Records", 1, 2) // "Records!$C$2"
 */
export function oneCell(sheet: string, row: number, column: number): string {
  return `${tabReference(sheet)}!$${utils.encode_col(column)}$${row + 1}`;
}

function tabReference(name: string): string {
  // A name that could be read as a cell (Q2) or holds anything but letters needs quotes.
  const plain = /^[A-Za-z_]\w*$/.test(name) && !/^[A-Za-z]{1,3}\d+$/.test(name);
  return plain ? name : `'${name.replaceAll("'", "''")}'`;
}
