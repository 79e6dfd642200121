import * as text from "../../sentences/made/own-tabs";
import { hasCells } from "../host/grid-tabs";
import { withLock } from "../host/lock";
import { FIRST_WORDS } from "../host/mark";
import { minuteNow } from "../host/minute-now";
import { WritingError } from "../host/writing-error";
import { sweepLeftovers } from "./leftovers";
import { makeTab } from "./make-tab";
import { isOurs, mustBeOurs } from "./own-tabs";
import type { TabContent } from "./tab-content";

type Workbook = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** A tab that we make empty, and the person fills. */
export interface TabToFill {
  readonly name: string;
  readonly header: readonly string[];
  /** What stands in its first cell after "your", such as "crew". */
  readonly what: string;
  /** How to fill it. */
  readonly how: string;
  readonly widths: readonly number[];
  readonly formats: TabContent["formats"];
}

/**
 * Makes an empty tab to be filled in; where there is one already, it is shown.
 *
 * @param there finds one that the person has
 * @returns its name
 * @throws Error when there is another tab of that name: nothing of the person's is ever overwritten
 */
export function makeTabToFill(
  tab: TabToFill,
  there: (workbook: Workbook) => Sheet | null,
): { tab: string } {
  return withLock(() => {
    const workbook = SpreadsheetApp.getActiveSpreadsheet();
    sweepLeftovers(workbook);
    const found = there(workbook);
    if (found !== null) return shown(found);
    // A workbook takes "crew" and "Crew" for one name.
    const alike = workbook
      .getSheets()
      .find((sheet) => sheet.getName().toLowerCase() === tab.name.toLowerCase());
    if (alike !== undefined && !hasCells(alike)) mustBeOurs(alike);
    if (alike !== undefined && !isOurs(alike)) {
      throw new WritingError({ code: "tabThere", tab: alike.getName(), columns: tab.header });
    }
    if (alike === undefined) makeTab(workbook, emptyTab(tab, minuteNow(workbook)));
    return shown(alike ?? (workbook.getSheetByName(tab.name) as Sheet));
  });
}

function shown(sheet: Sheet): { tab: string } {
  sheet.activate();
  return { tab: sheet.getName() };
}

function emptyTab(
  { name, header, what, how, widths, formats }: TabToFill,
  madeAt: string,
): TabContent {
  return {
    name,
    widths,
    formats,
    madeBy: `${FIRST_WORDS.toFill} ${text.toFill({ what, at: madeAt, how })}`,
    rows: [header.map((one) => ({ text: one }))],
    frozenRows: 2,
  };
}
