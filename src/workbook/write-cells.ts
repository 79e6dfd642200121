import { safeText } from "./safe-text";
import { beginLog, type LoggedCell, markLog } from "./write-log";

/** A cell of the person's own table that is about to be written. */
export interface CellWrite extends LoggedCell {
  readonly row: number;
  readonly column: number;
}

/** A cell by which a row or a column is known again: the batch's name, a header. */
export interface Landmark {
  readonly row: number;
  readonly column: number;
  readonly value: unknown;
}

/** Cells whose content is not what it was when the write was thought out. */
export class ChangedMeanwhile extends Error {}

/**
 * Writes cells of a person's table, all or none. The write is put down in the log first; each cell
 * is looked at once more just before, and what was written is put back if anything fails.
 *
 * @param landmarks cells that must still hold what they held, since they say whose cells these are
 * @throws ChangedMeanwhile when a cell no longer holds what it held
 */
export function writeCells(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
  sheet: GoogleAppsScript.Spreadsheet.Sheet,
  writes: readonly CellWrite[],
  landmarks: readonly Landmark[],
  said: { readonly id: string; readonly when: string; readonly who: string },
): void {
  const rows = beginLog(workbook, said.id, said.when, said.who, writes);
  const done: CellWrite[] = [];
  try {
    for (const write of writes) {
      mustStand(sheet, landmarks);
      const cell = sheet.getRange(write.row, write.column);
      if (cell.getFormula() !== "") {
        throw new ChangedMeanwhile(`${write.cell} holds a formula: it is not written over`);
      }
      if (!sameValue(cell.getValue(), write.before)) {
        throw new ChangedMeanwhile(
          `${write.cell} was changed by somebody else just now: look again`,
        );
      }
      done.push(write);
      cell.setValue(written(write.after));
    }
    markLog(workbook, rows, "written");
  } catch (error) {
    putBack(sheet, done);
    markLog(workbook, rows, "not written");
    throw error;
  }
}

/** Somebody may have put a row or a column in since the table was read. */
function mustStand(
  sheet: GoogleAppsScript.Spreadsheet.Sheet,
  landmarks: readonly Landmark[],
): void {
  for (const { row, column, value } of landmarks) {
    if (!sameValue(sheet.getRange(row, column).getValue(), value)) {
      throw new ChangedMeanwhile("Rows or columns of the records were moved just now: look again");
    }
  }
}

function putBack(sheet: GoogleAppsScript.Spreadsheet.Sheet, writes: readonly CellWrite[]): void {
  for (const { row, column, before } of [...writes].reverse()) {
    sheet.getRange(row, column).setValue(written(before));
  }
}

/** Whether two cell contents are the same; dates by their instant. */
export function sameValue(one: unknown, other: unknown): boolean {
  const plain = (value: unknown) => (value instanceof Date ? value.getTime() : value);
  return plain(one) === plain(other);
}

/** A value as it is handed to the spreadsheet: text stays text. */
export function written(value: LoggedCell["after"]): string | number | boolean | Date {
  return typeof value === "string" ? safeText(value) : value;
}
