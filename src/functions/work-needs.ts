import { workNeedsAnswer } from "../core";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { asOf, columns, records, timetable, wholeNumber } from "./parameter";
import { AS_OF, COLUMNS, RECORDS, TIMETABLE } from "./parameter-help";
import { NEEDS_DAYS } from "./usual";

export const workNeeds = functionOf(
  { records, timetable, asOf, days: wholeNumber(NEEDS_DAYS), columns },
  ({ days, ...given }) => workNeedsAnswer({ ...given, daysAhead: days }),
);

export const workNeedsHelp: HelpOf<typeof workNeeds> = {
  sentence: "What the tasks of the coming days need, how much, and from when on.",
  parameters: {
    records: RECORDS,
    timetable: TIMETABLE,
    asOf: AS_OF,
    days: "How many days to look ahead.",
    columns: COLUMNS,
  },
  answers:
    "One row an item and unit: the needs per plant of the tasks that BATCH_DUE lists for as many days, times their plants. Pieces are rounded up.",
  example: "=WORK_NEEDS(Records!A1:M7, , Settings!B1, 60)",
};
