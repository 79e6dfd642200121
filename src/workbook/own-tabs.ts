import { safeText } from "./safe-text";

/** The tabs that the add-in makes. It writes to these, and to cells that a person has confirmed. */
export const OWN_TABS = {
  settings: "Nursery settings",
  timetable: "Nursery timetable",
  due: "Due list",
  stages: "Stages",
  ready: "Ready by month",
  takes: "Takes",
  takesCompared: "Takes compared",
  takesTrend: "Takes by month",
  takeReasons: "What takes go with",
  checks: "Checks",
  log: "Write log",
} as const;

/** Every tab of ours begins with these words, so that a tab of the person's own is never taken for it. */
const MARK = "Nursery batches:";

/** A cell of a tab that we make. Text is kept as text; a formula is one of our own making. */
export type TabCell =
  | { readonly text: string }
  | { readonly number: number; readonly format?: string }
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
  /** Columns, from 0, whose number format is set whole; the cells' own formats are few. */
  readonly formats: Readonly<Record<number, string>>;
}

/** Our tab of a name; null when there is none, or a tab of that name is not ours. */
export function ownTab(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
  name: string,
): GoogleAppsScript.Spreadsheet.Sheet | null {
  const sheet = workbook.getSheetByName(name);
  if (sheet === null) return null;
  return String(sheet.getRange(1, 1).getValue()).startsWith(MARK) ? sheet : null;
}

/**
 * Makes a tab of ours anew: a new tab is filled and put in the place of the old one at the end, so
 * that whatever stops the work leaves the old tab whole.
 *
 * @throws Error when a tab of that name is the person's own
 */
export function replaceTab(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
  content: TabContent,
): void {
  const old = workbook.getSheetByName(content.name);
  if (old !== null && ownTab(workbook, content.name) === null) {
    throw new Error(
      `There is a tab "${content.name}" that is not the add-in's: rename it, then try again`,
    );
  }
  const fresh = workbook.insertSheet(freeName(workbook, content.name), workbook.getSheets().length);
  try {
    fill(fresh, content);
  } catch (error) {
    workbook.deleteSheet(fresh);
    throw error;
  }
  if (old !== null) workbook.deleteSheet(old);
  fresh.setName(content.name);
}

function freeName(workbook: GoogleAppsScript.Spreadsheet.Spreadsheet, name: string): string {
  const wished = `${name} (new)`;
  let free = wished;
  for (let number = 2; workbook.getSheetByName(free) !== null; number += 1) {
    free = `${wished} ${number}`;
  }
  return free;
}

/** Writes everything in a handful of calls, however many rows there are. */
function fill(sheet: GoogleAppsScript.Spreadsheet.Sheet, content: TabContent): void {
  const { rows, widths, formats, frozenRows } = content;
  const width = Math.max(1, ...rows.map((row) => row.length));
  const values = [
    [safeText(`${MARK} ${content.madeBy}`), ...Array<string>(width - 1).fill("")],
    ...rows.map((row) =>
      Array.from({ length: width }, (_, column) => cellValue(row[column] ?? null)),
    ),
  ];
  const missing = values.length - sheet.getMaxRows();
  if (missing > 0) sheet.insertRowsAfter(sheet.getMaxRows(), missing);
  for (const [column, format] of Object.entries(formats)) {
    sheet
      .getRange(2, Number(column) + 1, Math.max(1, values.length - 1), 1)
      .setNumberFormat(format);
  }
  sheet.getRange(1, 1, values.length, width).setValues(values);
  tickColumns(rows).forEach(({ column, first, count }) => {
    sheet.getRange(first + 2, column + 1, count, 1).insertCheckboxes();
  });
  sheet.getRange(1, 1).setFontWeight("bold");
  sheet.getRange(Math.min(frozenRows, values.length), 1, 1, width).setFontWeight("bold");
  sheet.setFrozenRows(Math.min(frozenRows, values.length));
  widths.forEach((pixels, column) => {
    sheet.setColumnWidth(column + 1, pixels);
  });
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
