import { stagesOf } from "../core";
import * as help from "../sentences/made/batch-stages-help";
import { stagesTable } from "../wording/batch-tables";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { asOf, columns, records, share, timetable } from "./parameter";
import { AS_OF, COLUMNS, LEVEL, RECORDS, TIMETABLE } from "./parameter-help";
import { FORECAST_LEVEL } from "./usual";

export const batchStages = functionOf(
  { records, timetable, asOf, level: share(FORECAST_LEVEL), columns },
  (given) => stagesTable(stagesOf(given)),
);

export const batchStagesHelp: HelpOf<typeof batchStages> = {
  sentence: help.sentence,
  parameters: {
    records: RECORDS,
    timetable: TIMETABLE,
    asOf: AS_OF,
    level: LEVEL,
    columns: COLUMNS,
  },
  answers: help.answers,
  example: "=BATCH_STAGES(Records!A1:M7, , Settings!B1)",
};
