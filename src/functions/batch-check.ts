import { checkAnswer } from "../core";
import { isMissing } from "../door/index";
import type { FunctionHelp, FunctionRun } from "./entry";
import { AS_OF_OPTIONAL, COLUMNS, RECORDS, TIMETABLE_OPTIONAL } from "./parameters";

export const batchCheckHelp: FunctionHelp = {
  name: "BATCH_CHECK",
  sentence:
    "What in your table can't be read or looks wrong, what happens because of it, what to do.",
  parameters: [RECORDS, TIMETABLE_OPTIONAL, AS_OF_OPTIONAL, COLUMNS],
  answers:
    "One row a trouble, costliest first. Row counts from 1 at the top of the range. The last row counts the rows of the range.",
  example: "=BATCH_CHECK(Records!A1:M7, , Settings!B1)",
};

export const batchCheck: FunctionRun = (door, [records, timetable, asOf, columns]) => {
  const day = isMissing(asOf) ? null : door.day("asOf", asOf);
  const built = door.timetableWithFaults(timetable);
  const read = door.records(records, { timetable: built.timetable, asOf: day, columns });
  return door.out(checkAnswer(read, built, day));
};
