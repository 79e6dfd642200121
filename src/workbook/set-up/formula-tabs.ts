import { checkedRecords, InputError, plannedWork, summedTakes } from "../../core";
import { noWorkPlan } from "../../sentences/made/order-tabs";
import { noTakeRates } from "../../sentences/made/take-tabs";
import { errorSentence } from "../../wording/errors";
import { workTable } from "../../wording/work-tables";
import { tasksNow } from "../due/due-tab";
import {
  columnsPart,
  type FormulaPart,
  formulaCall,
  LEFT_OUT,
  textPart,
  wholePart,
} from "../host/formula-text";
import type { RecordsNow } from "../reading/records-tab";
import { timetablePart } from "../reading/timetable-source";
import { TAKES_LEVEL, usualGrouping } from "../reading/usual-grouping";
import { type SettingCells, settingCells } from "../settings/settings";
import { live, sentenceTab, standsStill, valuesTab } from "../tabs/made-tabs";
import { makeTab } from "../tabs/make-tab";
import { OWN_TABS, ownTab } from "../tabs/own-tabs";
import { DAY_FORMAT, type TabContent } from "../tabs/tab-content";
import { type TakeParts, takeTabs } from "../takes/take-tabs";
import { crewAsCalled } from "../work/called-crew";
import { crewTabs } from "../work/crew-tabs";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type CellOut = ReturnType<RecordsNow["door"]["out"]>[number][number];

const PLANNED_DAYS = 14;

/** The tabs that are one live formula each, or values where a formula would name people. */
export function formulaTabs(now: RecordsNow): readonly TabContent[] {
  const records = columnsPart(now.sheet.getName(), now.values[0]?.length ?? 1);
  const timetable = timetablePart(now.workbook, now.settings.timetableTab);
  const cells = settingCells(now.workbook);
  const { asOf, level, columns } = cells;
  const batches = now.records.batches.length;
  return [
    live({
      name: OWN_TABS.stages,
      formula: formulaCall("BATCH_STAGES", [records, timetable, asOf, level, columns]),
      widths: [90, 110, 130, 110, 120, 90, 60, 120, 90, 90, 90, 90, 90, 90, 70, 70, 70, 320],
      formats: Object.fromEntries([5, 8, 9, 10, 11, 12, 13].map((column) => [column, DAY_FORMAT])),
      answered: batches,
    }),
    live({
      name: OWN_TABS.ready,
      formula: formulaCall("BATCH_READY", [records, timetable, asOf, level, columns]),
      widths: [90, 130, 70, 70, 70, 70, 90, 90, 90],
      formats: {},
      answered: 2 * batches,
    }),
    ...takesTabs(now, { range: records, columns, timetable }),
    live({
      name: OWN_TABS.checks,
      formula: formulaCall("BATCH_CHECK", [records, timetable, asOf, columns]),
      widths: [50, 130, 160, 280, 260, 260, 130],
      formats: {},
      answered: checkedRecords(now.records, { timetable: now.timetable, faults: [] }, now.asOf)
        .entries.length,
    }),
    ...workTab(now, { records, timetable, setting: cells }),
  ];
}

/** Take rates and what belongs to them; where the table has no takes at all, that is said. */
function takesTabs(now: RecordsNow, parts: TakeParts): readonly TabContent[] {
  const { records } = now;
  const { range, columns, timetable } = parts;
  const by = usualGrouping(records);
  const widths = [130, 70, 70, 70, 80, 70, 70, 90, 320];
  let groups = 0;
  try {
    groups = summedTakes({ records, by, level: TAKES_LEVEL }).groups.length;
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const text = noTakeRates({ why: errorSentence(error) });
    return [{ ...sentenceTab(OWN_TABS.takes, text), widths }];
  }
  return [
    live({
      name: OWN_TABS.takes,
      formula: formulaCall("TAKE_SUMMARY", [range, textPart(by), LEFT_OUT, columns, timetable]),
      widths,
      formats: { 4: "0.0%", 5: "0.0%", 6: "0.0%", 7: "0.0" },
      answered: groups,
    }),
    ...takeTabs(now, parts),
  ];
}

/** Only where there is a tab of persons. */
function workTab(
  now: RecordsNow,
  {
    records,
    timetable,
    setting: { asOf, looks, columns },
  }: {
    readonly records: FormulaPart;
    readonly timetable: FormulaPart;
    readonly setting: SettingCells;
  },
): readonly TabContent[] {
  const { workbook, door, settings } = now;
  const { crew, closed } = crewTabs(workbook, door, settings.recordsTab);
  if (crew === null) return [];
  const widths = [90, 120, 90, 110, 60, 60, 110, 90, 420];
  const formats = { 0: DAY_FORMAT, 7: DAY_FORMAT };
  if (settings.initials) {
    const rows = planRows(now, crew, closed);
    const name = OWN_TABS.workPlan;
    return [valuesTab({ workbook, name, rows, widths, formats })];
  }
  const persons = columnsPart(crew.getName(), crew.getLastColumn());
  const days = closed === null ? LEFT_OUT : columnsPart(closed.getName(), closed.getLastColumn());
  const ahead = wholePart(PLANNED_DAYS);
  return [
    live({
      name: OWN_TABS.workPlan,
      formula: formulaCall("WORK_PLAN", [
        records,
        timetable,
        persons,
        asOf,
        ahead,
        days,
        columns,
        looks,
      ]),
      widths,
      formats,
      answered: 4 * tasksNow(now, PLANNED_DAYS).length,
    }),
  ];
}

/** The plan as rows of a tab with initials; where it can't be made, why. */
function planRows(now: RecordsNow, crew: Sheet, closed: Sheet | null): CellOut[][] {
  const { records, timetable, asOf, door } = now;
  try {
    const question = {
      records,
      timetable,
      asOf,
      days: PLANNED_DAYS,
      withoutLooks: !now.settings.looks,
      crew: crewAsCalled(now, crew, true),
      closedDays: door.closedDays(closed?.getDataRange().getValues() ?? "", asOf),
    };
    return door.out(workTable(plannedWork(question)));
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return [[noWorkPlan({ why: errorSentence(error) })]];
  }
}

/** Makes those tabs anew that are there and stand still: with initials nothing in them is live. */
export function refreshStillTabs(now: RecordsNow): void {
  if (!now.settings.initials) return;
  for (const content of formulaTabs(now)) {
    if (!standsStill(content) || ownTab(now.workbook, content.name) === null) continue;
    makeTab(now.workbook, content);
  }
}
