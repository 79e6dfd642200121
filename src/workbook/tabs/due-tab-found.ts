import { done } from "../../sentences/made/due-tab";
import { gridTabs } from "../host/grid-tabs";
import { FIRST_WORDS, MARK } from "../host/mark";
import { isOursWithoutTitle, ROWS_LOOKED_AT } from "./own-heads";
import { OWN_TABS, ownTab } from "./own-tabs";

type Workbook = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** What the due list's first cell begins with, whatever its tab is called. */
export function dueTitle(): string {
  return `${MARK} ${FIRST_WORDS.due}`;
}

/**
 * Stands in the due list's first cell where a person has taken its title row away. A header is read back in
 * the words in which it is written: the stub takes it from the same message.
 */
export const firstHeader = done;

/**
 * The due list's tab: the one of its name, else one that a person has given another name, known by
 * its title or its header. Null where there is none.
 */
export function dueTabOf(workbook: Workbook): Sheet | null {
  return ownTab(workbook, OWN_TABS.due) ?? gridTabs(workbook).find(holdsDueList) ?? null;
}

/** Whether a tab is the due list, with its title or its header near the top. */
export function holdsDueList(sheet: Sheet): boolean {
  return isOursWithoutTitle(sheet, {
    name: OWN_TABS.due,
    mark: dueTitle(),
    rows: ROWS_LOOKED_AT,
  });
}
