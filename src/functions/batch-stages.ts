import { stagesAnswer } from "../core";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { asOf, columns, records, share, timetable } from "./parameter";
import { AS_OF, COLUMNS, LEVEL, RECORDS, TIMETABLE } from "./parameter-help";
import { FORECAST_LEVEL } from "./usual";

export const batchStages = functionOf(
  { records, timetable, asOf, level: share(FORECAST_LEVEL), columns },
  (given) => stagesAnswer(given),
);

export const batchStagesHelp: HelpOf<typeof batchStages> = {
  sentence:
    "Where each open batch stands, what comes next, and when how many plants will be ready.",
  parameters: {
    records: RECORDS,
    timetable: TIMETABLE,
    asOf: AS_OF,
    level: LEVEL,
    columns: COLUMNS,
  },
  answers:
    "One row an open batch: the last step, the next with its days, and the days and plants when ready, each as a range.",
  example: "=BATCH_STAGES(Records!A1:M7, , Settings!B1)",
};
