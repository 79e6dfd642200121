import { dueAnswer } from "../core";
import { wholeNumberArgument } from "../door/index";
import type { FunctionHelp, FunctionRun } from "./entry";
import { AS_OF, COLUMNS, RECORDS, TIMETABLE } from "./parameters";

const USUAL_DAYS_AHEAD = 7;

export const batchDueHelp: FunctionHelp = {
  name: "BATCH_DUE",
  sentence: "What is to be done, for which batch, where, between which days, and what is late.",
  parameters: [
    RECORDS,
    TIMETABLE,
    AS_OF,
    ["daysAhead?", "How many days to look ahead; 7 if left out."],
    COLUMNS,
  ],
  answers: "One row a task, soonest first. Status is late, due or coming.",
  example: "=BATCH_DUE(Records!A1:M7, , Settings!B1, 14)",
};

export const batchDue: FunctionRun = (door, [records, timetable, asOf, daysAhead, columns]) => {
  const day = door.day("asOf", asOf);
  const steps = door.timetable(timetable);
  return door.out(
    dueAnswer({
      asOf: day,
      timetable: steps,
      daysAhead: wholeNumberArgument("daysAhead", door.cell(daysAhead), USUAL_DAYS_AHEAD),
      records: door.records(records, { timetable: steps, asOf: day, columns }),
    }),
  );
};
