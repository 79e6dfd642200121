import type { CivilDay, Records, Timetable } from "../core";
import { type Door, openDoor } from "../door/index";
import { OWN_TABS, ownTab } from "./own-tabs";
import { readSettings, type Settings } from "./settings";
import { workbookHost } from "./workbook-host";

/** The records as they stand at this moment, with all that is needed to answer from them. */
export interface RecordsNow {
  readonly workbook: GoogleAppsScript.Spreadsheet.Spreadsheet;
  readonly sheet: GoogleAppsScript.Spreadsheet.Sheet;
  readonly settings: Settings;
  readonly door: Door;
  /** Every cell of the records tab, read once. */
  readonly values: readonly (readonly unknown[])[];
  readonly records: Records;
  readonly timetable: Timetable;
  readonly asOf: CivilDay;
}

/**
 * Reads the records tab and the timetable, each in one call.
 *
 * @throws Error in a sentence when the workbook is not set up or the records tab is gone
 */
export function recordsNow(): RecordsNow {
  const workbook = SpreadsheetApp.getActiveSpreadsheet();
  const settings = readSettings(workbook);
  if (settings === null) throw new Error("The workbook is not set up yet: open Set up first");
  const sheet = workbook.getSheetByName(settings.recordsTab);
  if (sheet === null) {
    throw new Error(
      `There is no tab "${settings.recordsTab}" any more: choose the records tab in Set up`,
    );
  }
  const door = openDoor(workbookHost());
  const values = sheet.getDataRange().getValues();
  const timetable = door.timetable(timetableValues(workbook));
  const asOf = asOfDay(door, settings.asOf);
  const columns = settings.columns.map((pair) => [...pair]);
  const records = door.records(values, {
    timetable,
    asOf,
    columns: columns.length === 0 ? "" : columns,
  });
  return { workbook, sheet, settings, door, values, records, timetable, asOf };
}

/** The day of the settings; where its cell is blank, or its formula not calculated yet, today. */
export function asOfDay(door: Door, cell: unknown): CivilDay {
  return door.day("As-of day", cell === "" || cell === undefined ? new Date() : cell);
}

/** The cells of our timetable tab below its first row; '' stands for the built-in timetable. */
export function timetableValues(workbook: GoogleAppsScript.Spreadsheet.Spreadsheet): unknown {
  const sheet = ownTab(workbook, OWN_TABS.timetable);
  return sheet === null ? "" : sheet.getDataRange().getValues().slice(1);
}
