import { workNeeds as needsOf } from "../core";
import * as help from "../sentences/made/work-needs-help";
import { needsTable } from "../wording/work-tables";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { asOf, columns, looks, records, timetable, wholeNumber } from "./parameter";
import { NEEDS_DAYS } from "./usual";

export const workNeeds = functionOf(
  { records, timetable, asOf, days: wholeNumber(NEEDS_DAYS), columns, looks },
  ({ days, looks: withoutLooks, ...given }) =>
    needsTable(needsOf({ ...given, daysAhead: days, withoutLooks })),
);

export const workNeedsHelp: HelpOf<typeof workNeeds> = {
  says: help,
  example: "=WORK_NEEDS(Records!A1:M7, , Settings!B1, 60)",
  onSample: "=WORK_NEEDS(Records!A:AB, Timetable!A:L, Settings!B1, 30)",
};
