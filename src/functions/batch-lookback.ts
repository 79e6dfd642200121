import { InputError, lookbackAnswer } from "../core";
import { wholeNumberArgument } from "../door/index";
import type { FunctionHelp, FunctionRun } from "./entry";
import { AS_OF, COLUMNS, LEVEL, RECORDS, TIMETABLE } from "./parameters";
import { projectionQuestion } from "./projection-question";

export const batchLookbackHelp: FunctionHelp = {
  name: "BATCH_LOOKBACK",
  sentence:
    "What the forecast would have said some days ago, knowing only what was recorded then, and how it held.",
  parameters: [
    RECORDS,
    TIMETABLE,
    AS_OF,
    ["daysBefore", "How many days before the as-of day to stand, such as 180."],
    LEVEL,
    COLUMNS,
  ],
  answers:
    "One row a batch that was under way then and whose outcome is known now; the last row counts how many ranges held.",
  example: "=BATCH_LOOKBACK(Records!A1:M7, , Settings!B1, 120)",
};

export const batchLookback: FunctionRun = (
  door,
  [records, timetable, asOf, daysBefore, level, columns],
) => {
  const days = wholeNumberArgument("daysBefore", door.cell(daysBefore), 0);
  if (days < 1) {
    throw new InputError("argument-unreadable", "daysBefore must be 1 or more whole days");
  }
  const question = projectionQuestion(door, [records, timetable, asOf, level, columns]);
  return door.out(lookbackAnswer({ ...question, daysBefore: days }));
};
