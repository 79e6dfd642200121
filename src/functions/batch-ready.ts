import { readyAnswer } from "../core";
import type { FunctionHelp, FunctionRun } from "./entry";
import { AS_OF, COLUMNS, LEVEL, RECORDS, TIMETABLE } from "./parameters";
import { projectionQuestion } from "./projection-question";

export const batchReadyHelp: FunctionHelp = {
  name: "BATCH_READY",
  sentence: "How many plants will be ready, by month and variety and all together, as ranges.",
  parameters: [RECORDS, TIMETABLE, AS_OF, LEVEL, COLUMNS],
  answers:
    "One row a month and variety, and All. Plants ready already stand in the month of the as-of day. Batches counts those whose likely day lies in the month. All is not the sum of the rows above it: ranges don't add, since hardly ever do all varieties have their fewest, or all their most, in the same month.",
  example: "=BATCH_READY(Records!A1:M7, , Settings!B1)",
};

export const batchReady: FunctionRun = (door, args) =>
  door.out(readyAnswer(projectionQuestion(door, args)));
