import { stepsAnswer } from "../core";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { asOf, columns, records, share, timetable } from "./parameter";
import { AS_OF, COLUMNS, LEVEL, RECORDS, TIMETABLE } from "./parameter-help";
import { FORECAST_LEVEL } from "./usual";

export const batchSteps = functionOf(
  { records, timetable, asOf, level: share(FORECAST_LEVEL), columns },
  (given) => stepsAnswer(given),
);

export const batchStepsHelp: HelpOf<typeof batchSteps> = {
  sentence: "Every step of every batch: what is recorded, and what is expected of steps to come.",
  parameters: {
    records: RECORDS,
    timetable: TIMETABLE,
    asOf: AS_OF,
    level: LEVEL,
    columns: COLUMNS,
  },
  answers: "One row a batch and step. Steps of closed batches carry what was recorded only.",
  example: "=BATCH_STEPS(Records!A1:M3, , Settings!B1)",
};
