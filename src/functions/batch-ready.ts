import { readyPlants } from "../core";
import * as help from "../sentences/made/batch-ready-help";
import { readyTable } from "../wording/batch-tables";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { asOf, columns, records, share, timetable } from "./parameter";
import { AS_OF, COLUMNS, LEVEL, RECORDS, TIMETABLE } from "./parameter-help";
import { FORECAST_LEVEL } from "./usual";

export const batchReady = functionOf(
  { records, timetable, asOf, level: share(FORECAST_LEVEL), columns },
  (given) => readyTable(readyPlants(given)),
);

export const batchReadyHelp: HelpOf<typeof batchReady> = {
  sentence: help.sentence,
  parameters: {
    records: RECORDS,
    timetable: TIMETABLE,
    asOf: AS_OF,
    level: LEVEL,
    columns: COLUMNS,
  },
  answers: help.answers,
  example: "=BATCH_READY(Records!A1:M7, , Settings!B1)",
};
