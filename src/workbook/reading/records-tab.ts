import {
  type CivilDay,
  isoDay,
  type LostColumn,
  type Records,
  shortened,
  type Timetable,
  type TimetableFault,
} from "../../core";
import { type Door, openDoor } from "../../door/index";
import * as text from "../../sentences/made/set-up";
import { minuteOf } from "../host/minute-now";
import { workbookHost } from "../host/workbook-host";
import { LABEL } from "../settings/found-settings";
import { readSettings, type Settings, toldFor } from "../settings/settings";
import { OWN_TABS, tabCells } from "../tabs/own-tabs";
import { renamedTab } from "./renamed-tab";
import { timetableOf, timetableValues } from "./timetable-source";

/** The records as they stand at this moment, with all that is needed to answer from them. */
export interface RecordsNow {
  readonly workbook: GoogleAppsScript.Spreadsheet.Spreadsheet;
  readonly sheet: GoogleAppsScript.Spreadsheet.Sheet;
  /** The name of the records tab. */
  readonly tab: string;
  readonly settings: Settings;
  readonly door: Door;
  /** The present minute in the workbook's zone, as "2026-11-25 09:00". */
  minute(): string;
  /** Every cell of the records tab, read once. */
  readonly values: readonly (readonly unknown[])[];
  readonly records: Records;
  readonly timetable: Timetable;
  /** What in the timetable can't be used. */
  readonly faults: readonly TimetableFault[];
  readonly asOf: CivilDay;
  /** Reads cells as the records are read, to see what would become of a change. */
  readonly readAs: (values: readonly (readonly unknown[])[]) => Records;
}

/**
 * Reads the records tab and the timetable, each in one call.
 *
 * @param tab another tab than that of the settings, read without the columns that they tell
 * @param faultyToo whether to go on with a timetable of which nothing can be used
 * @throws Error in a sentence when the workbook is not set up or the records tab is gone
 */
export function recordsNow(tab?: string, faultyToo = false): RecordsNow {
  const workbook = SpreadsheetApp.getActiveSpreadsheet();
  const saved = readSettings(workbook);
  if (saved === null) throw new Error(text.notSetUp());
  const wanted = tab ?? saved.recordsTab;
  if (wanted === "") throw new Error(text.noRecordsTab({ settings: OWN_TABS.settings }));
  const there = tabCells(workbook, wanted);
  const cells =
    there ?? (tab === undefined ? renamedTab(workbook, wanted, saved.timetableTab) : null);
  if (cells === null) {
    throw new Error(text.tabGone({ tab: shortened(wanted) }));
  }
  const name = there === null ? cells.sheet.getName() : wanted;
  const settings = tab === undefined ? { ...saved, recordsTab: name } : saved;
  const columns = toldFor(settings, name);
  return readTab(workbook, {
    sheet: cells.sheet,
    settings: { ...settings, columns },
    read: { faultyToo, ...cells, tab: name },
  });
}

/**
 * Reads a tab as records.
 *
 * @throws Error in a sentence when what was told of its columns can't be followed any more
 */
export function readTab(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
  {
    sheet,
    settings,
    read = {},
  }: {
    readonly sheet: GoogleAppsScript.Spreadsheet.Sheet;
    readonly settings: Settings;
    readonly read?: {
      readonly faultyToo?: boolean;
      readonly tab?: string;
      readonly values?: readonly (readonly unknown[])[];
    };
  },
): RecordsNow {
  const { faultyToo = false, tab = sheet.getName() } = read;
  const host = workbookHost(workbook);
  const door = openDoor(host, columnsArgument(settings.columns));
  const values = read.values ?? sheet.getDataRange().getValues();
  const own = timetableValues(workbook, settings.timetableTab);
  const timetable = faultyToo
    ? door.timetableWithFaults(own).timetable
    : timetableOf(door, own, settings.timetableTab);
  const faults = timetable.leftOut?.faults ?? [];
  const asOf = asOfDay(door, settings.asOf);
  const columns = columnsArgument(settings.columns);
  const lost = door.lostColumns(values, { timetable, columns }).find(({ why }) => why === "header");
  if (lost !== undefined) throw new Error(lostSentence(lost));
  const readAs = (cells: readonly (readonly unknown[])[]) =>
    door.records(cells, { timetable, asOf, columns });
  const records = readAs(values);
  const minute = () => minuteOf(host, new Date());
  return {
    workbook,
    sheet,
    tab,
    settings,
    door,
    minute,
    values,
    records,
    timetable,
    faults,
    asOf,
    readAs,
  };
}

/** What was told of a header that is gone. */
function lostSentence({ name, header }: LostColumn): string {
  return text.lostHeader({ header: shortened(header), name: shortened(name) });
}

/** Told columns as the door takes them. */
export function columnsArgument(columns: Settings["columns"]): unknown {
  return columns.length === 0 ? "" : columns.map((pair) => [...pair]);
}

/** The day of the settings; where its cell is blank, or its formula not calculated yet, today. */
export function asOfDay(door: Door, cell: unknown): CivilDay {
  return door.day(LABEL.asOf, cell === "" || cell === undefined ? new Date() : cell);
}

/** A cell's content in words: a day as ISO text, '' for a blank. */
export function plainText(door: Door, value: unknown): string {
  const cell = door.cell(value);
  return typeof cell === "object" ? isoDay(cell.day) : String(cell);
}
