import { placeLoads } from "../core";
import * as help from "../sentences/made/place-load-help";
import { placeTable } from "../wording/place-tables";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { asOf, columns, places, records, timetable } from "./parameter";

export const placeLoad = functionOf({ records, timetable, places, asOf, columns }, (given) =>
  placeTable(placeLoads(given)),
);

export const placeLoadHelp: HelpOf<typeof placeLoad> = {
  says: help,
  example: "=PLACE_LOAD(Records!A1:M7, , Places!A1:B3, Settings!B1)",
  onSample: "=PLACE_LOAD(Records!A:AB, Timetable!A:L, Places!A:B, Settings!B1)",
};
