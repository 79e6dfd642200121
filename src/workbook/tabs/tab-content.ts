import type { MendedBy } from "../../wording/writing-codes";
import { MARK } from "../host/mark";
import { safeText } from "../host/safe-text";
import type { OwnLayout } from "./straighten";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

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
  /** What made it and when; stands in the first cell. */
  readonly madeBy: string;
  /** What that begins with while the tab is half made; its name in small letters if left out. */
  readonly firstWords?: string;
  /** Rows below the first, the header first. */
  readonly rows: readonly (readonly TabCell[])[];
  /** Cells of the first row beside the title, by their columns from 1. */
  readonly top?: ReadonlyMap<number, TabCell>;
  /** Where it stands when it is made first, from 1; last if left out. */
  readonly before?: number | null;
  /** How many rows stay in view, the first one with them. */
  readonly frozenRows: number;
  /** How many columns stay in view; none if left out. */
  readonly frozenColumns?: number;
  /** Height of the first row in pixels; as usual if left out. */
  readonly topHeight?: number;
  /** Column widths in pixels. */
  readonly widths: readonly number[];
  /** Columns, from 0, whose number format is set whole. */
  readonly formats: Readonly<Record<number, string>>;
  /** A column, from 0, whose rows below the header have each its own number format. */
  readonly rowFormats?: { readonly column: number; readonly formats: readonly string[] };
  /** Columns, from 0, whose texts go on in further lines rather than beyond the cell. */
  readonly wrapped?: readonly number[];
  /** Whether texts stand in the middle of rows that others have made higher. */
  readonly middle?: boolean;
  /** Rows below the header, from its first, that stand out, and the columns, from 0, that do. */
  readonly bold?: { readonly rows: number; readonly column: number };
  /** Rows that the tab has at least, for what a formula spills; as many as are written if left out. */
  readonly tall?: number;
  /** Headers of columns that every row fills; none is known if left out. */
  readonly filled?: OwnLayout["filled"];
  /** What mends the tab if it is left half made; making the tabs again if left out. */
  readonly mendedBy?: MendedBy;
}

/** How our tabs show a day. */
export const DAY_FORMAT = "d mmm yyyy";

/**
 * So far down columns are formatted for what a formula spills or a person fills in. Below, a sheet
 * shows days in its own way; formats of whole columns would make every change of an open sheet slower.
 */
const FORMATTED_BELOW = 200;

/** Fills a new tab in a handful of calls, however many rows there are. */
export function fillTab(sheet: Sheet, content: TabContent): void {
  const madeBy = titleOf(content);
  const values = blockOf(content);
  const width = columnsWritten(content);
  // First of all, so that a tab that is left half made is known for ours.
  sheet.getRange(1, 1).setValue(madeBy);
  makeRoom(sheet, content);
  setFormats(sheet, content);
  // Before the values, since it unticks every box.
  for (const { column, first, count } of tickColumns(content.rows)) {
    sheet.getRange(first + 2, column + 1, count, 1).insertCheckboxes();
  }
  fillTop(sheet, content);
  sheet.getRange(2, 1, values.length, width).setValues(values);
  sheet.getRange(1, 1).setFontWeight("bold");
  setLook(sheet, content);
  setStress(sheet, content);
}

/** The cells of the first row beside the title. */
export function fillTop(sheet: Sheet, { top }: TabContent): void {
  for (const [column, cell] of top ?? []) {
    const range = sheet.getRange(1, column);
    if (cell !== null && "tick" in cell) range.setDataValidation(tickBox());
    if (cell !== null && "date" in cell) range.setNumberFormat(DAY_FORMAT);
    // A number or a text beside the title is for formulas and for us; a reader has no use for it.
    if (cell !== null && ("number" in cell || "text" in cell)) range.setNumberFormat(UNSEEN);
    range.setValue(cellValue(cell));
  }
}

const UNSEEN = ";;;";

/** The rule of a cell that is ticked or not. */
export function tickBox(): GoogleAppsScript.Spreadsheet.DataValidation {
  return SpreadsheetApp.newDataValidation().requireCheckbox().setAllowInvalid(false).build();
}

/** The text of a tab's first cell. */
export function titleOf({ madeBy }: TabContent): string {
  return safeText(`${MARK} ${madeBy}`);
}

/** How many columns are written. */
export function columnsWritten({ rows }: TabContent): number {
  return Math.max(1, ...rows.map((row) => row.length));
}

/** The rows below the first as values to be written, all of one width. */
export function blockOf(content: TabContent): (string | number | boolean | Date)[][] {
  const width = columnsWritten(content);
  return content.rows.map((row) =>
    Array.from({ length: width }, (_, column) => cellValue(row[column] ?? null)),
  );
}

/** Makes a tab as tall and as wide as its content needs; people take blank rows and columns off. */
export function makeRoom(sheet: Sheet, { rows, widths, tall = 0 }: TabContent, beside = 0): void {
  const room = sheet.getMaxRows();
  const missing = Math.max(rows.length + 1, tall) - room;
  if (missing > 0) sheet.insertRowsAfter(room, missing);
  const wide = sheet.getMaxColumns();
  const lacking = widths.length + beside - wide;
  if (lacking > 0) sheet.insertColumnsAfter(wide, lacking);
}

export function setFormats(sheet: Sheet, content: TabContent): void {
  const { rows, widths, formats, rowFormats, wrapped, middle } = content;
  const spilled = Math.min(FORMATTED_BELOW, sheet.getMaxRows() - 1);
  if (middle) {
    sheet.getRange(1, 1, rows.length + 1, widths.length).setVerticalAlignment("middle");
  }
  for (const column of wrapped ?? []) {
    sheet.getRange(1, column + 1, rows.length + 1, 1).setWrap(true);
  }
  const formatted = widths.map((_, column) => formats[column]);
  for (const { first, count, look } of alike(formatted)) {
    if (look === undefined) continue;
    sheet.getRange(2, first + 1, Math.max(1, rows.length, spilled), count).setNumberFormat(look);
  }
  if (rowFormats === undefined || rowFormats.formats.length === 0) return;
  sheet
    .getRange(FIRST_BELOW_HEADER, rowFormats.column + 1, rowFormats.formats.length, 1)
    .setNumberFormats(rowFormats.formats.map((format) => [format]));
}

/** What a person changes as they like afterwards: the header in bold and in view, and the widths. */
export function setLook(sheet: Sheet, content: TabContent): void {
  const frozen = Math.min(content.frozenRows, content.rows.length + 1);
  sheet.getRange(frozen, 1, 1, columnsWritten(content)).setFontWeight("bold");
  sheet.setFrozenRows(frozen);
  if (content.frozenColumns !== undefined) sheet.setFrozenColumns(content.frozenColumns);
  if (content.topHeight !== undefined) sheet.setRowHeight(1, content.topHeight);
  for (const { first, count, look } of alike(content.widths)) {
    sheet.setColumnWidths(first + 1, count, look);
  }
}

/** What stands out among the rows. */
export function setStress(sheet: Sheet, { rows, bold }: TabContent): void {
  if (bold === undefined || rows.length < 2) return;
  const column = bold.column + 1;
  sheet.getRange(FIRST_BELOW_HEADER, column, rows.length - 1, 1).setFontWeight("normal");
  if (bold.rows > 0) {
    sheet.getRange(FIRST_BELOW_HEADER, column, bold.rows, 1).setFontWeight("bold");
  }
}

const FIRST_BELOW_HEADER = 3;

export function cellValue(cell: TabCell): string | number | boolean | Date {
  if (cell === null) return "";
  if ("text" in cell) return safeText(cell.text);
  if ("number" in cell) return cell.number;
  if ("date" in cell) return cell.date;
  if ("tick" in cell) return cell.tick;
  return cell.formula;
}

/** Stretches of tick boxes, one a column; rows and columns from 0 within the rows. */
export function tickColumns(
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
