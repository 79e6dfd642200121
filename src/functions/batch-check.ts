import { checkAnswer } from "../core";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { asOfOrNone, columns, records, timetableWithFaults } from "./parameter";
import { AS_OF_OR_NONE, COLUMNS, RECORDS, TIMETABLE } from "./parameter-help";

export const batchCheck = functionOf(
  { records, timetable: timetableWithFaults, asOf: asOfOrNone, columns },
  (given) => checkAnswer(given.records, given.timetable, given.asOf),
);

export const batchCheckHelp: HelpOf<typeof batchCheck> = {
  sentence:
    "What in your table can't be read or looks wrong, what happens because of it, what to do.",
  parameters: {
    records: RECORDS,
    timetable: TIMETABLE,
    asOf: AS_OF_OR_NONE,
    columns: COLUMNS,
  },
  answers:
    "One row a trouble, costliest first. Row counts from 1 at the top of the range. The last row counts the rows of the range.",
  example: "=BATCH_CHECK(Records!A1:M7, , Settings!B1)",
};
