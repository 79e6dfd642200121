import { InputError, summaryAnswer, workPlanAnswer } from "../core";
import { crewAsCalled } from "./called-crew";
import { columnLetters } from "./cell-name";
import { crewTabs } from "./crew-tabs";
import { live, sentenceTab, standsStill, valuesTab } from "./made-tabs";
import { OWN_TABS, ownTab } from "./own-tabs";
import type { RecordsNow } from "./records-tab";
import { SETTING_CELLS } from "./settings";
import { replaceTab } from "./swap-tab";
import { DAY_FORMAT, type TabContent } from "./tab-content";
import { takeTabs } from "./take-tabs";
import { timetableRange } from "./timetable-source";
import { TAKES_LEVEL, usualGrouping } from "./usual-grouping";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type CellOut = ReturnType<RecordsNow["door"]["out"]>[number][number];

const PLANNED_DAYS = 14;

/** The tabs that are one live formula each, or values where a formula would name people. */
export function formulaTabs(now: RecordsNow): readonly TabContent[] {
  const records = wholeTab(now.sheet, now.values[0]?.length ?? 1);
  const timetable = timetableRange(now.workbook, now.settings.timetableTab);
  const { asOf, level } = SETTING_CELLS;
  const columns = now.settings.columnCells;
  return [
    live(
      OWN_TABS.stages,
      `BATCH_STAGES(${records},${timetable},${asOf},${level},${columns})`,
      [90, 110, 130, 110, 120, 90, 60, 120, 90, 90, 90, 90, 90, 90, 70, 70, 70, 320],
      Object.fromEntries([5, 8, 9, 10, 11, 12, 13].map((column) => [column, DAY_FORMAT])),
    ),
    live(
      OWN_TABS.ready,
      `BATCH_READY(${records},${timetable},${asOf},${level},${columns})`,
      [90, 130, 70, 70, 70, 70],
      {},
    ),
    ...takesTabs(now, records),
    live(
      OWN_TABS.checks,
      `BATCH_CHECK(${records},${timetable},${asOf},${columns})`,
      [50, 130, 160, 280, 260, 260],
      {},
    ),
    ...workTab(now, records, timetable),
  ];
}

/** Take rates and what belongs to them; where the table has no takes at all, that is said. */
function takesTabs(now: RecordsNow, range: string): readonly TabContent[] {
  const { records, settings } = now;
  const by = usualGrouping(records);
  const widths = [130, 70, 70, 70, 80, 70, 70, 90, 320];
  try {
    summaryAnswer({ records, by, level: TAKES_LEVEL });
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const text = `No take rates: ${error.message}. Once it has, make the tabs again in Set up`;
    return [{ ...sentenceTab(OWN_TABS.takes, text), madeBy: "take rates", widths }];
  }
  return [
    live(
      OWN_TABS.takes,
      `TAKE_SUMMARY(${range},"${by.replace(/"/g, '""')}",${TAKES_LEVEL},${settings.columnCells})`,
      widths,
      { 4: "0.0%", 5: "0.0%", 6: "0.0%", 7: "0.0" },
    ),
    ...takeTabs(now, range),
  ];
}

/** Only where there is a tab of persons. */
function workTab(now: RecordsNow, records: string, timetable: string): readonly TabContent[] {
  const { workbook, door, settings } = now;
  const { crew, closed } = crewTabs(workbook, door, settings.recordsTab);
  if (crew === null) return [];
  const widths = [90, 120, 90, 110, 60, 60, 110, 90, 420];
  const formats = { 0: DAY_FORMAT, 7: DAY_FORMAT };
  if (settings.initials) {
    const rows = planRows(now, crew, closed);
    const name = OWN_TABS.workPlan;
    return [valuesTab({ workbook, name, what: "work plan", rows, widths, formats })];
  }
  const { asOf } = SETTING_CELLS;
  const persons = wholeTab(crew, crew.getLastColumn());
  const days = closed === null ? "" : wholeTab(closed, closed.getLastColumn());
  return [
    live(
      OWN_TABS.workPlan,
      `WORK_PLAN(${records},${timetable},${persons},${asOf},${PLANNED_DAYS},${days},${settings.columnCells})`,
      widths,
      formats,
    ),
  ];
}

/** The plan as rows of a tab with initials; where it can't be made, why. */
function planRows(now: RecordsNow, crew: Sheet, closed: Sheet | null): CellOut[][] {
  const { records, timetable, asOf, door } = now;
  try {
    const question = {
      ...{ records, timetable, asOf, days: PLANNED_DAYS },
      crew: crewAsCalled(now, crew, true),
      closedDays: door.closedDays(closed?.getDataRange().getValues() ?? "", asOf),
    };
    return door.out(workPlanAnswer(question));
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return [[`No work plan: ${error.message}`]];
  }
}

/** Makes those tabs anew that are there and stand still: with initials nothing in them is live. */
export function refreshStillTabs(now: RecordsNow): void {
  if (!now.settings.initials) return;
  for (const content of formulaTabs(now)) {
    if (!standsStill(content) || ownTab(now.workbook, content.name) === null) continue;
    replaceTab(now.workbook, content);
  }
}

/** A tab's first columns as a formula names them. */
export function wholeTab(sheet: GoogleAppsScript.Spreadsheet.Sheet, columns: number): string {
  return `'${sheet.getName().replace(/'/g, "''")}'!A:${columnLetters(Math.max(1, columns))}`;
}
