import { placeLoadAnswer } from "../core";
import type { FunctionHelp, FunctionRun } from "./entry";
import { AS_OF, COLUMNS, RECORDS, TIMETABLE } from "./parameters";

export const placeLoadHelp: FunctionHelp = {
  name: "PLACE_LOAD",
  sentence: "How many plants stand in each place, week by week, and where they are too many.",
  parameters: [
    RECORDS,
    TIMETABLE,
    ["places", "Your table of places: Place, and how many plants it Holds."],
    AS_OF,
    COLUMNS,
  ],
  answers:
    "One row a place and week, from the as-of day's week on: the likely plants of the open batches at the start of the week, up to the week of their likely ready day, fewer after each likely count. Plants that are ready already, and those without a day to reckon from, stand in the first week alone. Places that are not in the table and batches without a place stand below, without Holds; the last row names them, and the batches that are left out.",
  example: "=PLACE_LOAD(Records!A1:M7, , Places!A1:B3, Settings!B1)",
};

export const placeLoad: FunctionRun = (door, [records, timetable, places, asOf, columns]) => {
  const day = door.day("asOf", asOf);
  const steps = door.timetable(timetable);
  return door.out(
    placeLoadAnswer({
      asOf: day,
      timetable: steps,
      places: door.places(places),
      records: door.records(records, { timetable: steps, asOf: day, columns }),
    }),
  );
};
