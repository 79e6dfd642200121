import type { OwnSettings } from "./own-settings";
import { OWN_TABS, ownTab } from "./own-tabs";
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
  /** The header by which the tab of takes compared is made, NO_TAB, or empty for the usual one. */
  readonly compareBy: string;
  /** Whether people are called by their initials. */
  readonly initials: boolean;
  /** The cells of the columns below, as a formula names them. */
  readonly columnCells: string;
  /** Our column name beside the header in the sheet, as the columns argument takes them. */
  readonly columns: readonly (readonly [name: string, header: string])[];
}

const USUAL_LEVEL = 0.8;
const USUAL_DAYS_AHEAD = 7;

/** Stands for a column where takes are to be compared in no tab. */
export const NO_TAB = "no tab";
const NAMES = "names";
const INITIALS = "initials";

/** Rows of the settings tab, from 1. The formulas of the other tabs point at these cells. */
const ROW = {
  header: 2,
  recordsTab: 3,
  asOf: 4,
  level: 5,
  daysAhead: 6,
  timetableTab: 7,
  compareBy: 8,
  people: 9,
  columnsHeader: 10,
  columns: 11,
};
const TIMETABLE_LABEL = "Timetable tab";
const COMPARE_LABEL = "Takes compared by";
const PEOPLE_LABEL = "People";
const COLUMNS_LABEL = "Our column";
/** Rows that the tab of an older add-in lacks, above the columns. */
const ROWS_SINCE = ROW.columnsHeader - ROW.compareBy;

/** Rows kept free for columns that are told by hand. */
export const COLUMN_ROWS = 40;
const LAST_ROW = ROW.columns + COLUMN_ROWS - 1;

export const SETTING_CELLS = {
  asOf: `'${OWN_TABS.settings}'!$B$${ROW.asOf}`,
  level: `'${OWN_TABS.settings}'!$B$${ROW.level}`,
} as const;

function columnCells(firstRow: number): string {
  return `'${OWN_TABS.settings}'!$A$${firstRow}:$B$${firstRow + COLUMN_ROWS - 1}`;
}

/** @returns null when the workbook has not been set up */
export function readSettings(workbook: GoogleAppsScript.Spreadsheet.Spreadsheet): Settings | null {
  const sheet = ownTab(workbook, OWN_TABS.settings);
  if (sheet === null) return null;
  const values = sheet.getRange(1, 1, LAST_ROW, 2).getValues();
  const value = (row: number): unknown => values[row - 1]?.[1];
  const older = isOlder(values);
  const firstColumn = older ? ROW.columns - ROWS_SINCE : ROW.columns;
  const people = older ? "" : String(value(ROW.people) ?? "").trim();
  return {
    recordsTab: String(value(ROW.recordsTab) ?? ""),
    timetableTab: String(value(ROW.timetableTab) ?? "").trim() || null,
    asOf: value(ROW.asOf),
    level: value(ROW.level),
    daysAhead: value(ROW.daysAhead),
    compareBy: older ? "" : String(value(ROW.compareBy) ?? "").trim(),
    // Whatever else was typed there, such as the word in another language, was not typed for names.
    initials: people !== "" && people.toLowerCase() !== NAMES,
    columnCells: columnCells(firstColumn),
    columns: values
      .slice(firstColumn - 1, firstColumn - 1 + COLUMN_ROWS)
      .map(([name, header]) => [String(name), String(header)] as const)
      .filter(([name, header]) => name !== "" && header !== ""),
  };
}

/** Whether the columns follow at once on the timetable's tab. */
function isOlder(values: readonly (readonly unknown[])[]): boolean {
  return values[ROW.compareBy - 1]?.[0] === COLUMNS_LABEL;
}

/** What Set up settles; the rest is the person's. */
export type Settled = Pick<
  Settings,
  "recordsTab" | "timetableTab" | "columns" | "compareBy" | "initials"
>;

/**
 * Writes what is settled into the settings tab that is there. Everything else in it is the person's;
 * and the tab stays the same one, since every live formula points at it. One call writes all, so that
 * no tab of records ever stands beside the columns of another.
 */
export function writeSettings(
  sheet: GoogleAppsScript.Spreadsheet.Sheet,
  { recordsTab, timetableTab, columns, compareBy, initials }: Settled,
): void {
  if (isOlder(sheet.getRange(1, 1, ROW.compareBy, 1).getValues())) {
    sheet.insertRowsAfter(ROW.compareBy - 1, ROWS_SINCE);
  }
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
  // The labels too, since a tab of an older add-in lacks them.
  rows[ROW.timetableTab - ROW.recordsTab] = [TIMETABLE_LABEL, safeText(timetableTab ?? "")];
  rows[ROW.compareBy - ROW.recordsTab] = [COMPARE_LABEL, safeText(compareBy)];
  rows[ROW.people - ROW.recordsTab] = [PEOPLE_LABEL, initials ? INITIALS : NAMES];
  for (let at = 0; at < COLUMN_ROWS; at += 1) {
    const [name, header] = columns[at] ?? ["", ""];
    rows[ROW.columns - ROW.recordsTab + at] = [safeText(name), safeText(header)];
  }
  cells.setValues(rows);
}

/** The settings tab as it is first made, following the person's own settings where they have such. */
export function settingsTab(
  { recordsTab, timetableTab, columns, compareBy, initials }: Settled,
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
        { formula: own.asOf ?? "=TODAY()" },
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
      [
        text(COMPARE_LABEL),
        text(compareBy),
        text(`A header in your sheet, or "${NO_TAB}"; read when the tabs are made in Set up`),
      ],
      [
        text(PEOPLE_LABEL),
        text(initials ? INITIALS : NAMES),
        text(
          `How grafters and crew are called: "${INITIALS}" or "${NAMES}". Customers, and Who in the write log, stay as written`,
        ),
      ],
      [
        text(COLUMNS_LABEL),
        text("Header in your sheet"),
        text("Only where a header can't be guessed"),
      ],
      ...columns.map(([name, header]) => [text(name), text(header)]),
    ],
    frozenRows: 2,
    widths: [150, 170, 360],
    formats: {},
  };
}
