import { OWN_TABS, ownTab } from "./own-tabs";
import { safeText } from "./safe-text";
import { isStraight, type OwnLayout, straightValues } from "./straighten";
import type { TabContent } from "./tab-content";

/** One cell that was, or is to be, written. */
export interface LoggedCell {
  readonly tab: string;
  /** Such as "F12"; '' for something that the table has no column for and only the log keeps. */
  readonly cell: string;
  readonly header: string;
  readonly batch: string;
  readonly task: string;
  /** What stood there and what was written, as cells hold them; '' is blank. */
  readonly before: CellContent;
  readonly after: CellContent;
}

export type CellContent = string | number | boolean | Date;

/**
 * "writing" and "taking back" stand for as long as that lasts, and where it was cut off, until the
 * next run looks; "not known" where the cell can't be found again or holds something else by then.
 */
export type LogState =
  | "writing"
  | "written"
  | "kept here"
  | "not written"
  | "taking back"
  | "taken back"
  | "not known";

export interface LogEntry extends LoggedCell {
  readonly id: string;
  readonly state: LogState;
  /** Row in the log tab, from 1. */
  readonly row: number;
}

const HEADER = [
  ...["Write", "When", "Who", "Tab", "Cell", "Column", "Batch", "Task", "Before", "After"],
  "State",
];
const FIRST_ROW = 3;
const STATE_COLUMN = HEADER.length;
const MADE_BY = "every cell that was written, and what stood there";
const LAYOUT: OwnLayout = {
  title: MADE_BY,
  header: HEADER,
  mendedBy: "try again",
};

/** The log tab as it is first made; never again, since it is the memory of all writes. */
export function logContent(): TabContent {
  return {
    name: OWN_TABS.log,
    madeBy: MADE_BY,
    rows: [HEADER.map((text) => ({ text }))],
    frozenRows: 2,
    widths: [90, 120, 80, 90, 50, 120, 90, 120, 120, 120, 90],
    formats: {},
  };
}

/** Writes the cells of one write down before they are written. @returns their rows, for markLog */
export function beginLog(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
  { id, when, who }: { readonly id: string; readonly when: string; readonly who: string },
  cells: readonly LoggedCell[],
): readonly number[] {
  const sheet = logTab(workbook);
  const first = Math.max(FIRST_ROW, sheet.getLastRow() + 1);
  const missing = first + cells.length - 1 - sheet.getMaxRows();
  if (missing > 0) sheet.insertRowsAfter(sheet.getMaxRows(), missing);
  const writing: LogState = "writing";
  sheet
    .getRange(first, 1, cells.length, HEADER.length)
    .setValues(
      cells.map((cell) => [
        safeText(id),
        safeText(when),
        safeText(who),
        safeText(cell.tab),
        safeText(cell.cell),
        safeText(cell.header),
        safeText(cell.batch),
        safeText(cell.task),
        kept(cell.before),
        kept(cell.after),
        writing,
      ]),
    );
  return cells.map((_, at) => first + at);
}

/** Writes what became of lines of the log. Neighbouring lines take one call. */
export function markLog(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
  marks: readonly { readonly row: number; readonly state: LogState }[],
): void {
  const sheet = logTab(workbook);
  const runs: { first: number; states: LogState[] }[] = [];
  for (const { row, state } of [...marks].sort((a, b) => a.row - b.row)) {
    const last = runs[runs.length - 1];
    if (last !== undefined && last.first + last.states.length === row) last.states.push(state);
    else runs.push({ first: row, states: [state] });
  }
  for (const { first, states } of runs) {
    sheet.getRange(first, STATE_COLUMN, states.length, 1).setValues(states.map((state) => [state]));
  }
}

/** All lines of the log, in the order in which they stand. */
export function logEntries(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
): readonly LogEntry[] {
  const values = logTab(workbook).getDataRange().getValues();
  return values.slice(FIRST_ROW - 1).map(
    (row, index): LogEntry => ({
      id: String(row[0]),
      row: index + FIRST_ROW,
      tab: String(row[3]),
      cell: String(row[4]),
      header: String(row[5]),
      batch: String(row[6]),
      task: String(row[7]),
      before: row[8],
      after: row[9],
      state: String(row[10]) as LogState,
    }),
  );
}

/** Whether the log has lines of a write that was cut off. Reads one column. */
export function hasUnsettled(workbook: GoogleAppsScript.Spreadsheet.Spreadsheet): boolean {
  const sheet = logTab(workbook);
  // At the start of every run that writes: a log that was tidied is brought back to how it is read.
  const wide = Math.min(HEADER.length, sheet.getMaxColumns());
  const top = sheet.getRange(1, 1, Math.min(2, sheet.getMaxRows()), wide).getValues();
  if (!isStraight(top, LAYOUT)) straightValues(sheet, LAYOUT);
  const count = sheet.getLastRow() - FIRST_ROW + 1;
  if (count < 1) return false;
  const states = sheet.getRange(FIRST_ROW, STATE_COLUMN, count, 1).getValues();
  return states.some(([state]) => isUnsettled(state as LogState));
}

export function isUnsettled(state: LogState): boolean {
  return state === "writing" || state === "taking back";
}

function logTab(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
): GoogleAppsScript.Spreadsheet.Sheet {
  const sheet = ownTab(workbook, OWN_TABS.log);
  if (sheet === null) throw new Error("The write log is missing: run Set up again");
  return sheet;
}

/** Text as text, numbers and days as they are, so that they can be put back unchanged. */
function kept(value: CellContent): CellContent {
  return typeof value === "string" ? safeText(value) : value;
}
