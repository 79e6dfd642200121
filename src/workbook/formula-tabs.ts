import { InputError, summaryAnswer } from "../core";
import { crewTabs } from "./crew-tabs";
import {
  columnsPart,
  type FormulaPart,
  formulaCall,
  LEFT_OUT,
  textPart,
  wholePart,
} from "./formula-text";
import { OWN_TABS } from "./own-tabs";
import type { RecordsNow } from "./records-tab";
import { SETTING_CELLS } from "./settings";
import { DAY_FORMAT, type TabCell, type TabContent } from "./tab-content";
import { takeTabs } from "./take-tabs";
import { timetablePart } from "./timetable-source";
import { TAKES_LEVEL, usualGrouping } from "./usual-grouping";

const PLANNED_DAYS = 14;

/** The tabs that are one live formula each. */
export function formulaTabs(now: RecordsNow): readonly TabContent[] {
  const records = columnsPart(now.sheet.getName(), now.values[0]?.length ?? 1);
  const timetable = timetablePart(now.workbook, now.settings.timetableTab);
  const { asOf, level, columns } = SETTING_CELLS;
  return [
    live(
      OWN_TABS.stages,
      formulaCall("BATCH_STAGES", [records, timetable, asOf, level, columns]),
      [90, 110, 130, 110, 120, 90, 60, 120, 90, 90, 90, 90, 90, 90, 70, 70, 70, 320],
      Object.fromEntries([5, 8, 9, 10, 11, 12, 13].map((column) => [column, DAY_FORMAT])),
    ),
    live(
      OWN_TABS.ready,
      formulaCall("BATCH_READY", [records, timetable, asOf, level, columns]),
      [90, 130, 70, 70, 70, 70],
      {},
    ),
    ...takesTabs(now, records),
    live(
      OWN_TABS.checks,
      formulaCall("BATCH_CHECK", [records, timetable, asOf, columns]),
      [50, 130, 160, 280, 260, 260],
      {},
    ),
    ...workTab(now, records, timetable),
  ];
}

/** Take rates and what belongs to them; where the table has no takes at all, that is said. */
function takesTabs({ records }: RecordsNow, range: FormulaPart): readonly TabContent[] {
  const by = usualGrouping(records);
  const widths = [130, 70, 70, 70, 80, 70, 70, 90, 320];
  try {
    summaryAnswer({ records, by, level: TAKES_LEVEL });
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const text = `No take rates: ${error.message}. Once it has, make the tabs again in Set up`;
    return [
      {
        ...{ name: OWN_TABS.takes, madeBy: "take rates", frozenRows: 1, widths, formats: {} },
        rows: [[], [{ text }]],
      },
    ];
  }
  const { columns } = SETTING_CELLS;
  return [
    live(
      OWN_TABS.takes,
      formulaCall("TAKE_SUMMARY", [range, textPart(by), LEFT_OUT, columns]),
      widths,
      { 4: "0.0%", 5: "0.0%", 6: "0.0%", 7: "0.0" },
    ),
    ...takeTabs(records, range, columns, live),
  ];
}

/** Only where there is a tab of persons. */
function workTab(
  { workbook, door, settings }: RecordsNow,
  records: FormulaPart,
  timetable: FormulaPart,
): readonly TabContent[] {
  const { crew, closed } = crewTabs(workbook, door, settings.recordsTab);
  if (crew === null) return [];
  const { asOf, columns } = SETTING_CELLS;
  const persons = columnsPart(crew.getName(), crew.getLastColumn());
  const days = closed === null ? LEFT_OUT : columnsPart(closed.getName(), closed.getLastColumn());
  const ahead = wholePart(PLANNED_DAYS);
  return [
    live(
      OWN_TABS.workPlan,
      formulaCall("WORK_PLAN", [records, timetable, persons, asOf, ahead, days, columns]),
      [90, 120, 90, 110, 60, 60, 110, 90, 420],
      { 0: DAY_FORMAT, 7: DAY_FORMAT },
    ),
  ];
}

function live(
  name: string,
  formula: string,
  widths: readonly number[],
  formats: TabContent["formats"],
): TabContent {
  const rows: TabCell[][] = [[], [{ formula }]];
  return { name, madeBy: `live, ${formula.slice(1)}`, rows, frozenRows: 3, widths, formats };
}
