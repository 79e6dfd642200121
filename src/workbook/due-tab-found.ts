import { DUE_HEADER } from "./due-columns";
import { gridTabs } from "./grid-tabs";
import { MARK } from "./mark";
import { hasDueHeader } from "./own-heads";
import { OWN_TABS, ownTab } from "./own-tabs";

type Workbook = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** What the due list's first cell begins with, whatever its tab is called. */
export const DUE_TITLE = `${MARK} due list`;

/** Stands in the due list's first cell where a person has taken its title row away. */
export const FIRST_HEADER = DUE_HEADER[0] ?? "";

const ROWS_LOOKED_AT = 6;
const COLUMNS_LOOKED_AT = 20;

/**
 * The due list's tab: the one of its name, else one that a person has given another name, known by
 * its title or its header. Null where there is none.
 */
export function dueTabOf(workbook: Workbook): Sheet | null {
  return ownTab(workbook, OWN_TABS.due) ?? gridTabs(workbook).find(holdsDueList) ?? null;
}

/** Whether a tab is the due list, with its title or its header near the top. */
export function holdsDueList(sheet: Sheet): boolean {
  const high = Math.min(Math.max(ROWS_LOOKED_AT, sheet.getLastRow()), sheet.getMaxRows());
  const rows = sheet
    .getRange(1, 1, high, Math.min(COLUMNS_LOOKED_AT, sheet.getMaxColumns()))
    .getValues()
    .map((row) => row.map(String));
  return (
    rows.some((row) => row.some((text) => text.startsWith(DUE_TITLE))) || rows.some(hasDueHeader)
  );
}
