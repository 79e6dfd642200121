import { MARK } from "./own-tabs";
import { safeText } from "./safe-text";

/** A cell of a tab that we make. Text is kept as text; a formula is one of our own making. */
export type TabCell =
  | { readonly text: string }
  | { readonly number: number }
  | { readonly date: Date }
  | { readonly formula: string }
  | { readonly tick: boolean }
  | null;

export interface TabContent {
  readonly name: string;
  /** What made it and when, in words; stands in the first cell. */
  readonly madeBy: string;
  /** Rows below the first, the header first. */
  readonly rows: readonly (readonly TabCell[])[];
  /** How many rows stay in view, the first one with them. */
  readonly frozenRows: number;
  /** Column widths in pixels. */
  readonly widths: readonly number[];
  /** Columns, from 0, whose number format is set whole. */
  readonly formats: Readonly<Record<number, string>>;
}

/** How our tabs show a day. */
export const DAY_FORMAT = "d mmm yyyy";

/**
 * So far down columns are formatted for what a formula spills or a person fills in. Below, a sheet
 * shows days in its own way; formats of whole columns would make every change of an open sheet slower.
 */
const FORMATTED_BELOW = 200;

/** Writes everything in a handful of calls, however many rows there are. */
export function fillTab(sheet: GoogleAppsScript.Spreadsheet.Sheet, content: TabContent): void {
  const { rows, widths, formats, frozenRows } = content;
  const width = Math.max(1, ...rows.map((row) => row.length));
  const madeBy = safeText(`${MARK} ${content.madeBy}`);
  // First of all, so that a tab that is left half made is known for ours.
  sheet.getRange(1, 1).setValue(madeBy);
  const values = [
    [madeBy, ...Array<string>(width - 1).fill("")],
    ...rows.map((row) =>
      Array.from({ length: width }, (_, column) => cellValue(row[column] ?? null)),
    ),
  ];
  const room = sheet.getMaxRows();
  const missing = values.length - room;
  if (missing > 0) sheet.insertRowsAfter(room, missing);
  const spilled = Math.min(FORMATTED_BELOW, room - 1);
  const formatted = widths.map((_, column) => formats[column]);
  for (const { first, count, look } of alike(formatted)) {
    if (look === undefined) continue;
    sheet
      .getRange(2, first + 1, Math.max(1, values.length - 1, spilled), count)
      .setNumberFormat(look);
  }
  // Before the values, since it unticks every box.
  for (const { column, first, count } of tickColumns(rows)) {
    sheet.getRange(first + 2, column + 1, count, 1).insertCheckboxes();
  }
  sheet.getRange(1, 1, values.length, width).setValues(values);
  sheet.getRange(1, 1).setFontWeight("bold");
  sheet.getRange(Math.min(frozenRows, values.length), 1, 1, width).setFontWeight("bold");
  sheet.setFrozenRows(Math.min(frozenRows, values.length));
  for (const { first, count, look } of alike(widths)) {
    sheet.setColumnWidths(first + 1, count, look);
  }
}

function cellValue(cell: TabCell): string | number | boolean | Date {
  if (cell === null) return "";
  if ("text" in cell) return safeText(cell.text);
  if ("number" in cell) return cell.number;
  if ("date" in cell) return cell.date;
  if ("tick" in cell) return cell.tick;
  return cell.formula;
}

/** Stretches of tick boxes, one a column. */
function tickColumns(
  rows: readonly (readonly TabCell[])[],
): { column: number; first: number; count: number }[] {
  const found = new Map<number, { column: number; first: number; count: number }>();
  rows.forEach((row, index) => {
    row.forEach((cell, column) => {
      if (cell === null || !("tick" in cell)) return;
      const stretch = found.get(column);
      if (stretch === undefined) found.set(column, { column, first: index, count: 1 });
      else stretch.count = index - stretch.first + 1;
    });
  });
  return [...found.values()];
}

/** Neighbouring columns that are alike, since every call costs time. */
function alike<Look>(looks: readonly Look[]): { first: number; count: number; look: Look }[] {
  const runs: { first: number; count: number; look: Look }[] = [];
  looks.forEach((look, column) => {
    const last = runs[runs.length - 1];
    if (last !== undefined && last.look === look) last.count += 1;
    else runs.push({ first: column, count: 1, look });
  });
  return runs;
}
