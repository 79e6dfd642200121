import { workNeedsAnswer } from "../core";
import { wholeNumberArgument } from "../door/index";
import type { FunctionHelp, FunctionRun } from "./entry";
import { AS_OF, COLUMNS, RECORDS, TIMETABLE } from "./parameters";

const USUAL_DAYS = 30;

export const workNeedsHelp: FunctionHelp = {
  name: "WORK_NEEDS",
  sentence: "What the tasks of the coming days need, how much, and from when on.",
  parameters: [
    RECORDS,
    TIMETABLE,
    AS_OF,
    ["days?", "How many days to look ahead; 30 if left out."],
    COLUMNS,
  ],
  answers:
    "One row an item and unit: the needs per plant of the tasks that BATCH_DUE lists for as many days, times their plants. Pieces are rounded up.",
  example: "=WORK_NEEDS(Records!A1:M7, , Settings!B1, 60)",
};

export const workNeeds: FunctionRun = (door, [records, timetable, asOf, days, columns]) => {
  const day = door.day("asOf", asOf);
  const steps = door.timetable(timetable);
  return door.out(
    workNeedsAnswer({
      asOf: day,
      timetable: steps,
      daysAhead: wholeNumberArgument("days", door.cell(days), USUAL_DAYS),
      records: door.records(records, { timetable: steps, asOf: day, columns }),
    }),
  );
};
