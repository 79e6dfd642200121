import { readyAnswer } from "../core";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { asOf, columns, records, share, timetable } from "./parameter";
import { AS_OF, COLUMNS, LEVEL, RECORDS, TIMETABLE } from "./parameter-help";
import { FORECAST_LEVEL } from "./usual";

export const batchReady = functionOf(
  { records, timetable, asOf, level: share(FORECAST_LEVEL), columns },
  (given) => readyAnswer(given),
);

export const batchReadyHelp: HelpOf<typeof batchReady> = {
  sentence: "How many plants will be ready, by month and variety and all together, as ranges.",
  parameters: {
    records: RECORDS,
    timetable: TIMETABLE,
    asOf: AS_OF,
    level: LEVEL,
    columns: COLUMNS,
  },
  answers:
    "One row a month and variety, and All. Plants ready already stand in the month of the as-of day. Batches counts those whose likely day lies in the month. All is not the sum of the rows above it: ranges don't add, since hardly ever do all varieties have their fewest, or all their most, in the same month.",
  example: "=BATCH_READY(Records!A1:M7, , Settings!B1)",
};
