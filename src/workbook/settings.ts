import { TOLD_HEADER } from "../door/index";
import { TODAY, tabPart } from "./formula-text";
import type { OwnSettings } from "./own-settings";
import { OWN_TABS, ownCells } from "./own-tabs";
import { safeText } from "./safe-text";
import type { TabCell, TabContent } from "./tab-content";

/** What a person has set, in a tab of their workbook: a copied workbook keeps its tabs. */
export interface Settings {
  readonly recordsTab: string;
  /** The person's own tab with the timetable; null where it is ours. */
  readonly timetableTab: string | null;
  /** Serial, date or text as the cell holds it; read by the door. */
  readonly asOf: unknown;
  readonly level: unknown;
  readonly daysAhead: unknown;
  /** Our column name beside the header in the sheet, as the columns argument takes them. */
  readonly columns: readonly (readonly [name: string, header: string])[];
}

const USUAL_LEVEL = 0.8;
const USUAL_DAYS_AHEAD = 7;

/** Rows of the settings tab, from 1. The formulas of the other tabs point at these cells. */
const ROW = {
  header: 2,
  recordsTab: 3,
  asOf: 4,
  level: 5,
  daysAhead: 6,
  timetableTab: 7,
  columnsHeader: 8,
  columns: 9,
};
const TIMETABLE_LABEL = "Timetable tab";

/** Rows kept free for columns that are told by hand. */
export const COLUMN_ROWS = 40;
const LAST_ROW = ROW.columns + COLUMN_ROWS - 1;

/**
 * Settings as arguments of formulas. The told columns are named with their header, which the
 * functions pass over: should all blank rows below it be deleted, something is left to refer to.
 */
export const SETTING_CELLS = {
  asOf: tabPart(OWN_TABS.settings, `$B$${ROW.asOf}`),
  level: tabPart(OWN_TABS.settings, `$B$${ROW.level}`),
  daysAhead: tabPart(OWN_TABS.settings, `$B$${ROW.daysAhead}`),
  columns: tabPart(OWN_TABS.settings, `$A$${ROW.columnsHeader}:$B$${LAST_ROW}`),
} as const;

/** @returns null when the workbook has not been set up */
export function readSettings(workbook: GoogleAppsScript.Spreadsheet.Spreadsheet): Settings | null {
  const cells = ownCells(workbook, OWN_TABS.settings);
  if (cells === null) return null;
  const values = cells.values.slice(0, LAST_ROW);
  const value = (row: number): unknown => values[row - 1]?.[1];
  return {
    recordsTab: String(value(ROW.recordsTab) ?? ""),
    timetableTab: String(value(ROW.timetableTab) ?? "").trim() || null,
    asOf: value(ROW.asOf),
    level: value(ROW.level),
    daysAhead: value(ROW.daysAhead),
    columns: values
      .slice(ROW.columns - 1)
      .map(([name = "", header = ""]) => [String(name), String(header)] as const)
      .filter(([name, header]) => name !== "" && header !== ""),
  };
}

/** What Set up settles; the rest is the person's. */
export type Settled = Pick<Settings, "recordsTab" | "timetableTab" | "columns">;

/**
 * Writes the records tab, the timetable's and the told columns into the settings tab that is there. Everything else in
 * it is the person's; and the tab stays the same one, since every live formula points at it. One
 * call writes all, so that no tab of records ever stands beside the columns of another.
 */
export function writeSettings(
  sheet: GoogleAppsScript.Spreadsheet.Sheet,
  { recordsTab, timetableTab, columns }: Settled,
): void {
  const cells = sheet.getRange(ROW.recordsTab, 1, LAST_ROW - ROW.recordsTab + 1, 2);
  const formulas = cells.getFormulas();
  const rows = cells.getValues().map((row, at) =>
    row.map((value, column) => {
      const formula = formulas[at]?.[column] ?? "";
      if (formula !== "") return formula;
      return typeof value === "string" ? safeText(value) : value;
    }),
  );
  (rows[0] as unknown[])[1] = safeText(recordsTab);
  // The label too, since a tab of an older add-in lacks it.
  rows[ROW.timetableTab - ROW.recordsTab] = [TIMETABLE_LABEL, safeText(timetableTab ?? "")];
  for (let at = 0; at < COLUMN_ROWS; at += 1) {
    const [name, header] = columns[at] ?? ["", ""];
    rows[ROW.columns - ROW.recordsTab + at] = [safeText(name), safeText(header)];
  }
  cells.setValues(rows);
}

/** The settings tab as it is first made, following the person's own settings where they have such. */
export function settingsTab(
  { recordsTab, timetableTab, columns }: Settled,
  own: OwnSettings,
  madeAt: string,
): TabContent {
  const text = (value: string): TabCell => ({ text: value });
  return {
    name: OWN_TABS.settings,
    madeBy: `settings, made ${madeAt} by Set up. Change the second column.`,
    rows: [
      [text("Setting"), text("Value"), text("What it is for")],
      [text("Records tab"), text(recordsTab), text("The tab with your table of batches")],
      [
        text("As-of day"),
        { formula: own.asOf ?? TODAY },
        text("The day every answer looks from; =TODAY() follows the calendar"),
      ],
      [
        text("Level"),
        own.level === null ? { number: USUAL_LEVEL } : { formula: own.level },
        text("How many of 100 ranges should hold, as a share"),
      ],
      [
        text("Days ahead"),
        own.daysAhead === null ? { number: USUAL_DAYS_AHEAD } : { formula: own.daysAhead },
        text("How far the due list looks ahead"),
      ],
      [
        text(TIMETABLE_LABEL),
        text(timetableTab ?? ""),
        text(`Your own tab with steps and days; blank for ${OWN_TABS.timetable}`),
      ],
      [...TOLD_HEADER.map(text), text("Only where a header can't be guessed")],
      ...columns.map(([name, header]) => [text(name), text(header)]),
    ],
    frozenRows: 2,
    widths: [150, 170, 360],
    formats: {},
  };
}
