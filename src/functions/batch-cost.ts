import { costAnswer } from "../core";
import type { FunctionHelp, FunctionRun } from "./entry";
import { AS_OF, COLUMNS, RECORDS, TIMETABLE } from "./parameters";

export const batchCostHelp: FunctionHelp = {
  name: "BATCH_COST",
  sentence: "What each batch has cost so far in materials and hours, losses included.",
  parameters: [
    RECORDS,
    TIMETABLE,
    [
      "prices",
      "Your table of prices: Item, Price, and Per, the unit it is for; the item hour is a person's work. Leave blank for hours alone.",
    ],
    AS_OF,
    COLUMNS,
  ],
  answers:
    "One row a begun batch: Materials from the timetable's Needs, Hours from its work rates, Cost of both, and Cost over the plants counted as ready or likely to be. A lot passes its cost on to the batches taken from it, by their plants. Below, for each method, all batches together, and what a started plant carries. What has no price is never 0: the last row names it.",
  example: "=BATCH_COST(Records!A1:M7, Steps!A1:J8, Prices!A1:C6, Settings!B1)",
};

export const batchCost: FunctionRun = (door, [records, timetable, prices, asOf, columns]) => {
  const day = door.day("asOf", asOf);
  const steps = door.timetable(timetable);
  return door.out(
    costAnswer({
      asOf: day,
      timetable: steps,
      prices: door.prices(prices),
      records: door.records(records, { timetable: steps, asOf: day, columns }),
    }),
  );
};
