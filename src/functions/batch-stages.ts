import { stagesAnswer } from "../core";
import type { FunctionHelp, FunctionRun } from "./entry";
import { AS_OF, COLUMNS, LEVEL, RECORDS, TIMETABLE } from "./parameters";
import { projectionQuestion } from "./projection-question";

export const batchStagesHelp: FunctionHelp = {
  name: "BATCH_STAGES",
  sentence:
    "Where each open batch stands, what comes next, and when how many plants will be ready.",
  parameters: [RECORDS, TIMETABLE, AS_OF, LEVEL, COLUMNS],
  answers:
    "One row an open batch: the last step, the next with its days, and the days and plants when ready, each as a range.",
  example: "=BATCH_STAGES(Records!A1:M7, , Settings!B1)",
};

export const batchStages: FunctionRun = (door, args) =>
  door.out(stagesAnswer(projectionQuestion(door, args)));
