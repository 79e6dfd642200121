import { safeText } from "./safe-text";
import { beginLog, type CellContent, type LoggedCell, markLog } from "./write-log";

/** A cell of the person's own table that is about to be written. */
export interface CellWrite {
  readonly row: number;
  readonly column: number;
  /** Such as "F12". */
  readonly cell: string;
  readonly before: CellContent;
  readonly after: CellContent;
}

/** A cell by which a row or a column is known again: the batch's name, a header. */
export interface Landmark {
  readonly row: number;
  readonly column: number;
  readonly value: unknown;
}

/** Cells whose content is not what it was when the write was thought out. */
export class ChangedMeanwhile extends Error {}

/** Cells that were written and could not be put back, since rows have moved or a call failed. */
export class NotPutBack extends Error {}

/**
 * Writes cells of a person's table, all or none, and puts them down in the log.
 *
 * @param kept what the table has no column for, for the log alone
 * @param landmarks cells that must still hold what they held, since they say whose cells these are
 * @throws ChangedMeanwhile when a cell no longer holds what it held
 * @throws NotPutBack when it failed and could not be undone; the log then says "writing"
 */
export function writeCells(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
  sheet: GoogleAppsScript.Spreadsheet.Sheet,
  writes: readonly (CellWrite & LoggedCell)[],
  kept: readonly LoggedCell[],
  landmarks: readonly Landmark[],
  said: { readonly id: string; readonly when: string; readonly who: string },
): void {
  const rows = beginLog(workbook, said, [...writes, ...kept]);
  const mark = (written: "written" | "not written" | "writing") =>
    markLog(
      workbook,
      rows.map((row, at) => ({
        row,
        state: written === "written" && at >= writes.length ? "kept here" : written,
      })),
    );
  try {
    allOrNone(sheet, writes, landmarks, () => mark("written"));
  } catch (error) {
    mark(error instanceof NotPutBack ? "writing" : "not written");
    throw error;
  }
}

/**
 * Writes cells, each looked at once more just before; what was written is put back if anything
 * fails, the last step as well.
 *
 * @param last done when all cells are written
 */
export function allOrNone(
  sheet: GoogleAppsScript.Spreadsheet.Sheet,
  writes: readonly CellWrite[],
  landmarks: readonly Landmark[],
  last: () => void,
): void {
  const done: CellWrite[] = [];
  try {
    const missing = Math.max(0, ...writes.map(({ row }) => row)) - sheet.getMaxRows();
    if (missing > 0) sheet.insertRowsAfter(sheet.getMaxRows(), missing);
    for (const write of writes) {
      if (!stand(sheet, landmarks)) {
        throw new ChangedMeanwhile("Rows or columns of the table were moved just now: look again");
      }
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
    last();
  } catch (error) {
    putBack(sheet, done, landmarks, error);
    throw error;
  }
}

/** Whether the cells still hold what they held: somebody may have put a row or a column in. */
function stand(sheet: GoogleAppsScript.Spreadsheet.Sheet, landmarks: readonly Landmark[]): boolean {
  return [...new Set(landmarks.map(({ row }) => row))].every((row) => {
    const own = landmarks.filter((one) => one.row === row);
    const columns = own.map(({ column }) => column);
    const first = Math.min(...columns);
    const width = Math.max(...columns) - first + 1;
    const [values = []] = sheet.getRange(row, first, 1, width).getValues();
    return own.every(({ column, value }) => sameValue(values[column - first], value));
  });
}

/** Undoes what was written; a cell that somebody has changed since is left as it is. */
function putBack(
  sheet: GoogleAppsScript.Spreadsheet.Sheet,
  writes: readonly CellWrite[],
  landmarks: readonly Landmark[],
  because: unknown,
): void {
  if (writes.length === 0) return;
  const why = because instanceof Error ? because.message : String(because);
  const cells = writes.map(({ cell }) => cell).join(", ");
  const sentence = `${why}. Only part may be written (${cells}): the write log will say`;
  try {
    if (!stand(sheet, landmarks)) throw new NotPutBack(sentence);
    for (const { row, column, before, after } of [...writes].reverse()) {
      const cell = sheet.getRange(row, column);
      if (sameValue(cell.getValue(), after)) cell.setValue(written(before));
    }
  } catch {
    throw new NotPutBack(sentence);
  }
}

/** Whether two cell contents are the same; dates by their instant. */
export function sameValue(one: unknown, other: unknown): boolean {
  const plain = (value: unknown) => (value instanceof Date ? value.getTime() : value);
  return plain(one) === plain(other);
}

/** A value as it is handed to the spreadsheet: text stays text. */
function written(value: CellContent): CellContent {
  return typeof value === "string" ? safeText(value) : value;
}
