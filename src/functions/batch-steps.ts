import { stepsAnswer } from "../core";
import type { FunctionHelp, FunctionRun } from "./entry";
import { AS_OF, COLUMNS, LEVEL, RECORDS, TIMETABLE } from "./parameters";
import { projectionQuestion } from "./projection-question";

export const batchStepsHelp: FunctionHelp = {
  name: "BATCH_STEPS",
  sentence: "Every step of every batch: what is recorded, and what is expected of steps to come.",
  parameters: [RECORDS, TIMETABLE, AS_OF, LEVEL, COLUMNS],
  answers: "One row a batch and step. Steps of closed batches carry what was recorded only.",
  example: "=BATCH_STEPS(Records!A1:M3, , Settings!B1)",
};

export const batchSteps: FunctionRun = (door, args) =>
  door.out(stepsAnswer(projectionQuestion(door, args)));
