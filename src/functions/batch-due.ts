import { dueTasks } from "../core";
import * as help from "../sentences/made/batch-due-help";
import { dueTable } from "../wording/batch-tables";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { asOf, columns, looks, records, timetable, wholeNumber } from "./parameter";
import { DAYS_AHEAD } from "./usual";

export const batchDue = functionOf(
  { records, timetable, asOf, daysAhead: wholeNumber(DAYS_AHEAD), columns, looks },
  ({ looks: withoutLooks, ...given }) => dueTable(dueTasks({ ...given, withoutLooks })),
);

export const batchDueHelp: HelpOf<typeof batchDue> = {
  says: help,
  example: "=BATCH_DUE(Records!A1:M7, , Settings!B1, 14)",
  onSample: "=BATCH_DUE(Records!A:AB, Timetable!A:L, Settings!B1)",
};
