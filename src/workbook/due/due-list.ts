import { dueTitle, holdsDueList } from "../tabs/due-tab-found";
import { isStraight, straightValues } from "../tabs/straighten";
import { dueLayout } from "./due-tab";

/** The due tab, read. */
export interface DueList {
  readonly sheet: GoogleAppsScript.Spreadsheet.Sheet;
  /** All its cells, to be read again. */
  readonly range: GoogleAppsScript.Spreadsheet.Range;
  readonly values: readonly (readonly unknown[])[];
}

/** Reads a tab that may be the due list, whatever it is called; null when it is a person's own. */
export function readOwnDueList(sheet: GoogleAppsScript.Spreadsheet.Sheet): DueList | null {
  const range = sheet.getDataRange();
  const values = range.getValues();
  if (isStraight(values, dueLayout())) return { sheet, range, values };
  return String(values[0]?.[0]).startsWith(dueTitle()) || holdsDueList(sheet)
    ? readDueList(sheet)
    : null;
}

/** Reads the due tab, brought back to how we make it where a person has tidied it. */
export function readDueList(sheet: GoogleAppsScript.Spreadsheet.Sheet): DueList {
  const range = sheet.getDataRange();
  const values = range.getValues();
  if (isStraight(values, dueLayout())) return { sheet, range, values };
  const straight = straightValues(sheet, dueLayout());
  return { sheet, range: sheet.getDataRange(), values: straight };
}
