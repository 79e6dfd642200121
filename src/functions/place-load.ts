import { placeLoadAnswer } from "../core";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { asOf, columns, places, records, timetable } from "./parameter";
import { AS_OF, COLUMNS, RECORDS, TIMETABLE } from "./parameter-help";

export const placeLoad = functionOf({ records, timetable, places, asOf, columns }, (given) =>
  placeLoadAnswer(given),
);

export const placeLoadHelp: HelpOf<typeof placeLoad> = {
  sentence: "How many plants stand in each place, week by week, and where they are too many.",
  parameters: {
    records: RECORDS,
    timetable: TIMETABLE,
    places: "Your table of places: Place, and how many plants it Holds.",
    asOf: AS_OF,
    columns: COLUMNS,
  },
  answers:
    "One row a place and week, from the as-of day's week on: the likely plants of the open batches at the start of the week, up to the week of their likely ready day, fewer after each likely count. Plants that are ready already, and those without a day to reckon from, stand in the first week alone. Places that are not in the table and batches without a place stand below, without Holds; the last row names them, and the batches that are left out.",
  example: "=PLACE_LOAD(Records!A1:M7, , Places!A1:B3, Settings!B1)",
};
