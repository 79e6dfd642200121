import { InputError, lookback } from "../core";
import * as help from "../sentences/made/batch-lookback-help";
import { lookbackTable } from "../wording/batch-tables";
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
import { FORECAST_LEVEL } from "./usual";

const daysBefore: Parameter<number> = {
  optional: false,
  read: (given) => {
    const days = neededNumber.read(given);
    if (days >= 1) return days;
    throw new InputError({ code: "below-one-day", argument: given.name, found: days });
  },
};

export const batchLookback = functionOf(
  { records, timetable, asOf, daysBefore, level: share(FORECAST_LEVEL), columns },
  (given) => lookbackTable(lookback(given)),
);

export const batchLookbackHelp: HelpOf<typeof batchLookback> = {
  says: help,
  example: "=BATCH_LOOKBACK(Records!A1:M7, , Settings!B1, 120)",
  onSample: "=BATCH_LOOKBACK(Records!A:AB, , Settings!B1, 180)",
};
