import { dueAnswer } from "../core";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { asOf, columns, records, timetable, wholeNumber } from "./parameter";
import { AS_OF, COLUMNS, RECORDS, TIMETABLE } from "./parameter-help";
import { DAYS_AHEAD } from "./usual";

export const batchDue = functionOf(
  { records, timetable, asOf, daysAhead: wholeNumber(DAYS_AHEAD), columns },
  (given) => dueAnswer(given),
);

export const batchDueHelp: HelpOf<typeof batchDue> = {
  sentence: "What is to be done, for which batch, where, between which days, and what is late.",
  parameters: {
    records: RECORDS,
    timetable: TIMETABLE,
    asOf: AS_OF,
    daysAhead: "How many days to look ahead.",
    columns: COLUMNS,
  },
  answers: "One row a task, soonest first. Status is late, due or coming.",
  example: "=BATCH_DUE(Records!A1:M7, , Settings!B1, 14)",
};
