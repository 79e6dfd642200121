import { costAnswer } from "../core";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { asOf, columns, prices, records, timetable } from "./parameter";
import { AS_OF, COLUMNS, RECORDS, TIMETABLE } from "./parameter-help";

export const batchCost = functionOf({ records, timetable, prices, asOf, columns }, (given) =>
  costAnswer(given),
);

export const batchCostHelp: HelpOf<typeof batchCost> = {
  sentence: "What each batch has cost so far in materials and hours, losses included.",
  parameters: {
    records: RECORDS,
    timetable: TIMETABLE,
    prices:
      "Your table of prices: Item, Price, and Per, the unit it is for; the item hour is a person's work. Leave blank for hours alone.",
    asOf: AS_OF,
    columns: COLUMNS,
  },
  answers:
    "One row a begun batch: Materials from the timetable's Needs, Hours from its work rates, Cost of both, and Cost over the plants counted as ready or likely to be. A lot passes its cost on to the batches taken from it, by their plants. Below, for each method, all batches together, and what a started plant carries. What has no price is never 0: the last row names it.",
  example: "=BATCH_COST(Records!A1:M7, Steps!A1:J8, Prices!A1:C6, Settings!B1)",
};
