import { builtInTimetable, LEAVE_ALONE, type Records, timetableAnswer } from "../core";
import { openDoor } from "../door/index";
import { dueTab } from "./due-tab";
import { withLock } from "./lock";
import { OWN_TABS, ownTab, replaceTab, type TabCell, type TabContent } from "./own-tabs";
import { type RecordsNow, recordsNow } from "./records-tab";
import { readSettings, SETTING_CELLS, settingsRows } from "./settings";
import type { SetUpAnswer, SetUpRequest, TabCandidate } from "./sidebar-calls";
import { takeTabs } from "./take-tabs";
import { workbookHost } from "./workbook-host";
import { writeLogHeader } from "./write-log";

const USUAL_LEVEL = 0.8;
const USUAL_DAYS_AHEAD = 7;

/** Tabs in which batches can be read, most batches first. Tabs of ours are no records. */
export function recordTabCandidates(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
): readonly TabCandidate[] {
  const own: ReadonlySet<string> = new Set(Object.values(OWN_TABS));
  return workbook
    .getSheets()
    .filter((sheet) => !own.has(sheet.getName()))
    .map((sheet) => ({ tab: sheet.getName(), batches: batchesIn(sheet) }))
    .filter(({ batches }) => batches > 0)
    .sort((a, b) => b.batches - a.batches);
}

function batchesIn(sheet: GoogleAppsScript.Spreadsheet.Sheet): number {
  try {
    const { batches, columns } = readTab(sheet);
    // A timetable names steps too, but no batches.
    const named = columns.some(({ target }) => target?.kind === "fact" && target.fact === "batch");
    return named ? batches.length : 0;
  } catch {
    // No header of batches in it: another kind of tab.
    return 0;
  }
}

/** Reads a tab as records by the built-in timetable, without a day. */
export function readTab(
  sheet: GoogleAppsScript.Spreadsheet.Sheet,
  columns: readonly (readonly [string, string])[] = [],
): Records {
  const door = openDoor(workbookHost());
  return door.records(sheet.getDataRange().getValues(), {
    timetable: builtInTimetable(),
    asOf: null,
    columns: columns.length === 0 ? "" : columns.map((pair) => [...pair]),
  });
}

/**
 * Makes the add-in's tabs. The settings and the timetable, which a person may have changed, are made
 * once and then kept; the others are made anew.
 */
export function setUp(request: SetUpRequest): SetUpAnswer {
  return withLock(() => {
    const workbook = SpreadsheetApp.getActiveSpreadsheet();
    if (workbook.getSheetByName(request.tab) === null) {
      throw new Error(`There is no tab "${request.tab}"`);
    }
    const made: string[] = [];
    const kept: string[] = [];
    const make = (content: TabContent) => {
      replaceTab(workbook, content);
      made.push(content.name);
    };
    make(settingsTab(request, workbook));
    if (ownTab(workbook, OWN_TABS.timetable) === null) make(timetableTab(request.methods));
    else kept.push(OWN_TABS.timetable);
    const now = recordsNow();
    make(dueTab(now));
    for (const content of formulaTabs(now)) make(content);
    if (writeLogHeader(workbook)) made.push(OWN_TABS.log);
    else kept.push(OWN_TABS.log);
    workbook.setActiveSheet(workbook.getSheetByName(OWN_TABS.due) ?? now.sheet);
    return { made, kept };
  });
}

function settingsTab(
  request: SetUpRequest,
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
): TabContent {
  const before = readSettings(workbook);
  const changed = new Map(request.columns.map(({ header, readAs }) => [header, readAs]));
  const columns = [
    ...(before?.recordsTab === request.tab ? before.columns : []).filter(
      ([, header]) => !changed.has(header),
    ),
    ...request.columns.map(({ header, readAs }) => [readAs ?? LEAVE_ALONE, header] as const),
  ];
  return {
    name: OWN_TABS.settings,
    madeBy: `settings, made ${today()} by Set up. Change the second column.`,
    rows: settingsRows({
      recordsTab: request.tab,
      columns,
      asOf: asOfCell(before?.asOf),
      level: typeof before?.level === "number" ? before.level : USUAL_LEVEL,
      daysAhead: typeof before?.daysAhead === "number" ? before.daysAhead : USUAL_DAYS_AHEAD,
    }),
    frozenRows: 2,
    widths: [150, 170, 360],
    formats: {},
  };
}

/** A day typed by hand stays; else the calendar's. */
function asOfCell(before: unknown): TabCell {
  const workbook = SpreadsheetApp.getActiveSpreadsheet();
  const sheet = ownTab(workbook, OWN_TABS.settings);
  const formula =
    sheet === null ? "" : sheet.getRange(SETTING_CELLS.asOf.split("!")[1] ?? "").getFormula();
  return before instanceof Date && formula === "" ? { date: before } : { formula: "=TODAY()" };
}

function timetableTab(methods: readonly string[]): TabContent {
  const chosen = new Set(methods);
  const { columns, rows } = timetableAnswer(builtInTimetable(), null);
  const cell = (value: unknown): TabCell =>
    value === null || value === ""
      ? null
      : typeof value === "number"
        ? { number: value }
        : { text: String(value) };
  return {
    name: OWN_TABS.timetable,
    madeBy: `timetable, copied ${today()} from the built-in steps. It is yours to change.`,
    rows: [
      columns.map(({ name }) => ({ text: name })),
      ...rows
        .filter(([method]) => chosen.size === 0 || chosen.has(String(method)))
        .map((row) => row.map(cell)),
    ],
    frozenRows: 2,
    widths: [150, 120, 110, 70, 70, 70, 70, 80, 90, 220, 320, 320],
    formats: {},
  };
}

/** Tabs that are one live formula each. */
function formulaTabs({
  settings: { recordsTab },
  values,
  records: read,
}: RecordsNow): TabContent[] {
  const records = `'${recordsTab.replace(/'/g, "''")}'!A:${columnLetters(values[0]?.length ?? 1)}`;
  const timetable = `'${OWN_TABS.timetable}'!A:L`;
  const { asOf, level, columns } = SETTING_CELLS;
  const tab = (
    name: string,
    formula: string,
    widths: number[],
    formats: TabContent["formats"],
  ) => ({
    name,
    madeBy: `live, ${formula}`,
    rows: [[], [{ formula: `=${formula}` }]],
    frozenRows: 3,
    widths,
    formats,
  });
  const day = "d mmm yyyy";
  return [
    tab(
      OWN_TABS.stages,
      `BATCH_STAGES(${records},${timetable},${asOf},${level},${columns})`,
      [90, 110, 130, 110, 120, 90, 60, 120, 90, 90, 90, 90, 90, 90, 70, 70, 70, 320],
      Object.fromEntries([5, 8, 9, 10, 11, 12, 13].map((column) => [column, day])),
    ),
    tab(
      OWN_TABS.ready,
      `BATCH_READY(${records},${timetable},${asOf},${level},${columns})`,
      [90, 130, 70, 70, 70, 70],
      {},
    ),
    tab(
      OWN_TABS.takes,
      `TAKE_SUMMARY(${records},"Variety",0.95,${columns})`,
      [130, 70, 70, 70, 80, 70, 70, 90, 320],
      { 4: "0.0%", 5: "0.0%", 6: "0.0%", 7: "0.0" },
    ),
    ...takeTabs(read, records, columns, tab),
    tab(
      OWN_TABS.checks,
      `BATCH_CHECK(${records},${timetable},${asOf},${columns})`,
      [50, 130, 160, 280, 260, 260],
      {},
    ),
  ];
}

/** "A" for 1, "AA" for 27. */
export function columnLetters(column: number): string {
  let letters = "";
  for (let left = column; left > 0; left = Math.floor((left - 1) / 26)) {
    letters = String.fromCharCode(65 + ((left - 1) % 26)) + letters;
  }
  return letters;
}

/** Makes the due list anew; the other tabs are live. */
export function refresh(): void {
  withLock(() => {
    const now = recordsNow();
    replaceTab(now.workbook, dueTab(now));
  });
}

export function today(): string {
  const zone = SpreadsheetApp.getActiveSpreadsheet().getSpreadsheetTimeZone();
  return Utilities.formatDate(new Date(), zone, "yyyy-MM-dd HH:mm");
}
