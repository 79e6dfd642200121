import { OWN_TABS, ownTab } from "./own-tabs";
import { safeText } from "./safe-text";

/** One cell that was, or is to be, written. */
export interface LoggedCell {
  readonly tab: string;
  /** Such as "F12". */
  readonly cell: string;
  readonly header: string;
  readonly batch: string;
  readonly task: string;
  /** What stood there and what was written, as cells hold them; '' is blank. */
  readonly before: string | number | boolean | Date;
  readonly after: string | number | boolean | Date;
}

export type LogState = "writing" | "written" | "not written" | "taken back";

export interface LogEntry extends LoggedCell {
  readonly id: string;
  readonly state: LogState;
  /** Row in the log tab, from 1. */
  readonly row: number;
}

const HEADER = [
  "Write",
  "When",
  "Who",
  "Tab",
  "Cell",
  "Column",
  "Batch",
  "Task",
  "Before",
  "After",
  "State",
];
const FIRST_ROW = 3;
const STATE_COLUMN = HEADER.length;

/** Makes the log tab if there is none; it is never made anew, since it is the memory of all writes. */
export function writeLogHeader(workbook: GoogleAppsScript.Spreadsheet.Spreadsheet): boolean {
  if (ownTab(workbook, OWN_TABS.log) !== null) return false;
  const sheet = workbook.insertSheet(OWN_TABS.log, workbook.getSheets().length);
  const blanks = Array<string>(HEADER.length - 1).fill("");
  sheet
    .getRange(1, 1, 2, HEADER.length)
    .setValues([
      [safeText("Nursery batches: every cell that was written, and what stood there"), ...blanks],
      HEADER,
    ]);
  sheet.getRange(2, 1, 1, HEADER.length).setFontWeight("bold");
  sheet.setFrozenRows(2);
  return true;
}

/** Writes the cells of one write down before they are written. @returns the rows, for markLog */
export function beginLog(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
  id: string,
  when: string,
  who: string,
  cells: readonly LoggedCell[],
): { readonly first: number; readonly count: number } {
  const sheet = logTab(workbook);
  const first = Math.max(FIRST_ROW, sheet.getLastRow() + 1);
  const missing = first + cells.length - 1 - sheet.getMaxRows();
  if (missing > 0) sheet.insertRowsAfter(sheet.getMaxRows(), missing);
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
        "writing",
      ]),
    );
  return { first, count: cells.length };
}

export function markLog(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
  { first, count }: { readonly first: number; readonly count: number },
  state: LogState,
): void {
  logTab(workbook)
    .getRange(first, STATE_COLUMN, count, 1)
    .setValues(Array.from({ length: count }, () => [state]));
}

/** The entries of one write, in the order in which they were written. */
export function logEntries(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
  id: string,
): readonly LogEntry[] {
  const values = logTab(workbook).getDataRange().getValues();
  return values.flatMap((row, index): LogEntry[] =>
    index < FIRST_ROW - 1 || String(row[0]) !== id
      ? []
      : [
          {
            id,
            row: index + 1,
            tab: String(row[3]),
            cell: String(row[4]),
            header: String(row[5]),
            batch: String(row[6]),
            task: String(row[7]),
            before: row[8],
            after: row[9],
            state: String(row[10]) as LogState,
          },
        ],
  );
}

function logTab(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
): GoogleAppsScript.Spreadsheet.Sheet {
  const sheet = ownTab(workbook, OWN_TABS.log);
  if (sheet === null) throw new Error("The write log is missing: run Set up again");
  return sheet;
}

/** Text as text, numbers and days as they are, so that they can be put back unchanged. */
function kept(value: LoggedCell["before"]): string | number | boolean | Date {
  return typeof value === "string" ? safeText(value) : value;
}
