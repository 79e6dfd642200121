import { batchLosses as lossesOf } from "../core";
import * as help from "../sentences/made/batch-losses-help";
import { lossesTable } from "../wording/loss-tables";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { columns, pricesOrNone, records, textOrNone, timetableOrBuiltIn } from "./parameter";

export const batchLosses = functionOf(
  { records, by: textOrNone, timetable: timetableOrBuiltIn, prices: pricesOrNone, columns },
  (given) => lossesTable(lossesOf(given)),
);

export const batchLossesHelp: HelpOf<typeof batchLosses> = {
  says: help,
  example: '=BATCH_LOSSES(Records!A1:M7, "Variety", Steps!A1:J8, Prices!A1:C6)',
  onSample: '=BATCH_LOSSES(Records!A:AB, "Variety", Timetable!A:L, Prices!A:C)',
};
