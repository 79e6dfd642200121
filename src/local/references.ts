import { utils } from "@e965/xlsx";
import type { SheetDraft } from "./workbook-data";

/** Whole columns of a tab, from A to the last filled one, as a formula names them. */
export function wholeColumns(draft: SheetDraft): string {
  const width = Math.max(1, ...draft.rows.map((row) => row.length));
  return `${tabReference(draft.name)}!A:${utils.encode_col(width - 1)}`;
}

/** One cell, row and column counted from 0, as a formula names it from another tab. */
export function oneCell(sheet: string, row: number, column: number): string {
  return `${tabReference(sheet)}!$${utils.encode_col(column)}$${row + 1}`;
}

function tabReference(name: string): string {
  // A name that could be read as a cell (Q2) or holds anything but letters needs quotes.
  const plain = /^[A-Za-z_]\w*$/.test(name) && !/^[A-Za-z]{1,3}\d+$/.test(name);
  return plain ? name : `'${name.replaceAll("'", "''")}'`;
}
