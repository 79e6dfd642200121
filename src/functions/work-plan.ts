import { plannedWork } from "../core";
import * as help from "../sentences/made/work-plan-help";
import { workTable } from "../wording/work-tables";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import {
  asOf,
  closedDays,
  columns,
  crew,
  looks,
  records,
  timetable,
  wholeNumber,
} from "./parameter";
import { PLANNED_DAYS } from "./usual";

export const workPlan = functionOf(
  { records, timetable, crew, asOf, days: wholeNumber(PLANNED_DAYS), closedDays, columns, looks },
  ({ looks: withoutLooks, ...given }) => workTable(plannedWork({ ...given, withoutLooks })),
);

export const workPlanHelp: HelpOf<typeof workPlan> = {
  says: help,
  example:
    "=WORK_PLAN(Records!A1:M7, Steps!A1:J8, Crew!A1:E3, Settings!B1, 14, 'Closed days'!A1:A2)",
  onSample: "=WORK_PLAN(Records!A:AB, Timetable!A:L, Crew!A:E, Settings!B1, 14, 'Closed days'!A:B)",
};
