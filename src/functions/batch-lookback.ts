import { InputError, lookbackAnswer } from "../core";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import {
  asOf,
  columns,
  neededNumber,
  type Parameter,
  records,
  share,
  timetable,
} from "./parameter";
import { AS_OF, COLUMNS, LEVEL, RECORDS, TIMETABLE } from "./parameter-help";
import { FORECAST_LEVEL } from "./usual";

const daysBefore: Parameter<number> = {
  optional: false,
  read: (given) => {
    const days = neededNumber.read(given);
    if (days >= 1) return days;
    throw new InputError("argument-unreadable", "daysBefore must be 1 or more whole days");
  },
};

export const batchLookback = functionOf(
  { records, timetable, asOf, daysBefore, level: share(FORECAST_LEVEL), columns },
  (given) => lookbackAnswer(given),
);

export const batchLookbackHelp: HelpOf<typeof batchLookback> = {
  sentence:
    "What the forecast would have said some days ago, knowing only what was recorded then, and how it held.",
  parameters: {
    records: RECORDS,
    timetable: TIMETABLE,
    asOf: AS_OF,
    daysBefore: "How many days before the as-of day to stand, such as 180.",
    level: LEVEL,
    columns: COLUMNS,
  },
  answers:
    "One row a batch that was under way then and whose outcome is known now; the last row counts how many ranges held.",
  example: "=BATCH_LOOKBACK(Records!A1:M7, , Settings!B1, 120)",
};
