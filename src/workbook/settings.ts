import { OWN_TABS, ownTab, type TabCell } from "./own-tabs";

/** What a person has set, in a tab of their workbook: a copied workbook keeps its tabs. */
export interface Settings {
  readonly recordsTab: string;
  /** Serial, date or text as the cell holds it; read by the door. */
  readonly asOf: unknown;
  readonly level: unknown;
  readonly daysAhead: unknown;
  /** Our column name beside the header in the sheet, as the columns argument takes them. */
  readonly columns: readonly (readonly [name: string, header: string])[];
}

/** Rows of the settings tab, from 1. The formulas of the other tabs point at these cells. */
const ROW = {
  header: 2,
  recordsTab: 3,
  asOf: 4,
  level: 5,
  daysAhead: 6,
  columnsHeader: 8,
  columns: 9,
};
/** Rows kept free for columns that are told by hand. */
const COLUMN_ROWS = 40;

export const SETTING_CELLS = {
  asOf: `'${OWN_TABS.settings}'!$B$${ROW.asOf}`,
  level: `'${OWN_TABS.settings}'!$B$${ROW.level}`,
  daysAhead: `'${OWN_TABS.settings}'!$B$${ROW.daysAhead}`,
  columns: `'${OWN_TABS.settings}'!$A$${ROW.columns}:$B$${ROW.columns + COLUMN_ROWS - 1}`,
} as const;

/** @returns null when the workbook has not been set up */
export function readSettings(workbook: GoogleAppsScript.Spreadsheet.Spreadsheet): Settings | null {
  const sheet = ownTab(workbook, OWN_TABS.settings);
  if (sheet === null) return null;
  const values = sheet.getRange(1, 1, ROW.columns + COLUMN_ROWS - 1, 2).getValues();
  const value = (row: number): unknown => values[row - 1]?.[1];
  return {
    recordsTab: String(value(ROW.recordsTab) ?? ""),
    asOf: value(ROW.asOf),
    level: value(ROW.level),
    daysAhead: value(ROW.daysAhead),
    columns: values
      .slice(ROW.columns - 1)
      .map(([name, header]) => [String(name), String(header)] as const)
      .filter(([name, header]) => name !== "" && header !== ""),
  };
}

/** The rows of the settings tab below its first. */
export function settingsRows(
  settings: Pick<Settings, "recordsTab" | "columns"> & {
    readonly asOf: TabCell;
    readonly level: number;
    readonly daysAhead: number;
  },
): TabCell[][] {
  const text = (value: string): TabCell => ({ text: value });
  return [
    [text("Setting"), text("Value"), text("What it is for")],
    [text("Records tab"), text(settings.recordsTab), text("The tab with your table of batches")],
    [
      text("As-of day"),
      settings.asOf,
      text("The day every answer looks from; =TODAY() follows the calendar"),
    ],
    [
      text("Level"),
      { number: settings.level },
      text("How many of 100 ranges should hold, as a share"),
    ],
    [text("Days ahead"), { number: settings.daysAhead }, text("How far the due list looks ahead")],
    [],
    [
      text("Our column"),
      text("Header in your sheet"),
      text("Only where a header can't be guessed"),
    ],
    ...settings.columns.map(([name, header]) => [text(name), text(header)]),
  ];
}
