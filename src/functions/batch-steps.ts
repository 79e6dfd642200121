import { stepsOf } from "../core";
import * as help from "../sentences/made/batch-steps-help";
import { stepsTable } from "../wording/batch-tables";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { asOf, columns, records, share, timetable } from "./parameter";
import { AS_OF, COLUMNS, LEVEL, RECORDS, TIMETABLE } from "./parameter-help";
import { FORECAST_LEVEL } from "./usual";

export const batchSteps = functionOf(
  { records, timetable, asOf, level: share(FORECAST_LEVEL), columns },
  (given) => stepsTable(stepsOf(given)),
);

export const batchStepsHelp: HelpOf<typeof batchSteps> = {
  sentence: help.sentence,
  parameters: {
    records: RECORDS,
    timetable: TIMETABLE,
    asOf: AS_OF,
    level: LEVEL,
    columns: COLUMNS,
  },
  answers: help.answers,
  example: "=BATCH_STEPS(Records!A1:M3, , Settings!B1)",
};
