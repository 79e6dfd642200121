import { CREW_HEADER, crewColumns, isClosedDays } from "../core";
import type { Door } from "../door/index";
import { withLock } from "./lock";
import { minuteNow } from "./minute-now";
import { CREW_TAB, isOurs, OWN_TABS } from "./own-tabs";
import { replaceTab, sweepLeftovers } from "./swap-tab";
import type { TabContent } from "./tab-content";

type Workbook = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** A tab of closed days is known by its name as well: a header "Day" stands in many other tabs. */
const CLOSED_NAMES = ["closed days", "closed", "holidays", "public holidays", "days closed"];

/** A header stands in one of these rows. */
const ROWS_LOOKED_AT = 10;

export interface CrewTabs {
  readonly crew: Sheet | null;
  readonly closed: Sheet | null;
}

/**
 * Finds the tab with the persons and the one with the closed days. Persons are looked for in a tab
 * called Crew, else in the one with most of the columns; the heads of the tabs alone are read.
 *
 * @param recordsTab is never taken for either
 */
export function crewTabs(workbook: Workbook, door: Door, recordsTab: string): CrewTabs {
  const own: ReadonlySet<string> = new Set(Object.values(OWN_TABS));
  const sheets = workbook.getSheets().flatMap((sheet) => {
    const name = sheet.getName();
    return name === recordsTab || own.has(name) ? [] : [{ sheet, name: name.trim().toLowerCase() }];
  });
  const closed =
    sheets.find(
      ({ sheet, name }) => CLOSED_NAMES.includes(name) && isClosedDays(door.grid(headOf(sheet))),
    )?.sheet ?? null;
  const columnsOf = (sheet: Sheet) => crewColumns(door.grid(headOf(sheet)));
  const called = sheets.find(({ name }) => name === CREW_TAB.toLowerCase());
  if (called !== undefined && columnsOf(called.sheet) > 0) return { crew: called.sheet, closed };
  let best: { readonly sheet: Sheet; readonly found: number } | null = null;
  for (const { sheet } of sheets) {
    const found = sheet === called?.sheet || sheet === closed ? 0 : columnsOf(sheet);
    if (found > (best?.found ?? 0)) best = { sheet, found };
  }
  return { crew: best?.sheet ?? null, closed };
}

function headOf(sheet: Sheet): unknown[][] {
  const rows = Math.min(ROWS_LOOKED_AT, sheet.getLastRow());
  return rows === 0 ? [[""]] : sheet.getRange(1, 1, rows, sheet.getLastColumn()).getValues();
}

/**
 * Makes an empty tab of persons, to be filled in; where it is made already, it is shown.
 *
 * @returns its name
 * @throws Error when there is another tab of that name: nothing of the person's is ever overwritten
 */
export function makeCrewTab(): string {
  return withLock(() => {
    const workbook = SpreadsheetApp.getActiveSpreadsheet();
    sweepLeftovers(workbook);
    // A workbook takes "crew" and "Crew" for one name.
    const there = workbook
      .getSheets()
      .find((sheet) => sheet.getName().toLowerCase() === CREW_TAB.toLowerCase());
    if (there === undefined) replaceTab(workbook, emptyCrewTab(minuteNow(workbook)));
    else if (!isOurs(there)) throw new Error(thereSentence(there.getName()));
    workbook.getSheetByName(CREW_TAB)?.activate();
    return CREW_TAB;
  });
}

function thereSentence(name: string): string {
  return `There is a tab "${name}" already: give it the columns ${CREW_HEADER.join(", ")}, or rename it, then try again`;
}

function emptyCrewTab(madeAt: string): TabContent {
  return {
    name: CREW_TAB,
    madeBy: `your crew, made ${madeAt}; a row a person. Tasks: names of steps with ; between, blank for all. Off from and Off to: days away.`,
    rows: [CREW_HEADER.map((text) => ({ text }))],
    frozenRows: 2,
    widths: [130, 260, 90, 90, 90],
    formats: { 3: "d mmm yyyy", 4: "d mmm yyyy" },
  };
}
