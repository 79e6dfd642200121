import { costsSoFar } from "../core";
import * as help from "../sentences/made/batch-cost-help";
import { costTable } from "../wording/cost-tables";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { asOf, columns, prices, records, timetable } from "./parameter";

export const batchCost = functionOf({ records, timetable, prices, asOf, columns }, (given) =>
  costTable(costsSoFar(given)),
);

export const batchCostHelp: HelpOf<typeof batchCost> = {
  says: help,
  example: "=BATCH_COST(Records!A1:M7, Steps!A1:J8, Prices!A1:C6, Settings!B1)",
  onSample: "=BATCH_COST(Records!A:AB, Timetable!A:L, Prices!A:C, Settings!B1)",
};
