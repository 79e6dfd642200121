/**
 * Makes the sheets of this folder: `node sample-sheets/hillside-nursery/make.mjs`.
 * Another folder may be named to write there instead.
 */
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import {
  closedDaysRows,
  crewRows,
  ordersRows,
  perPersonHour,
  placesRows,
  pricesRows,
} from "../make/hillside/other-sheets.mjs";
import { recordsRows } from "../make/hillside/records.mjs";
import { asOf } from "../make/hillside/scenario.mjs";
import { settingsRows } from "../make/settings-sheet.mjs";
import { writeSheetFiles } from "../make/sheet-files.mjs";
import { timetableRows } from "../make/timetable-sheet.mjs";

const seed = 4;

writeSheetFiles(process.argv[2] ?? dirname(fileURLToPath(import.meta.url)), "hillside-nursery", [
  { sheet: "Records", rows: recordsRows(seed) },
  {
    sheet: "Timetable",
    rows: timetableRows({ perPersonHour, source: "this nursery's own count (invented)" }),
  },
  { sheet: "Orders", rows: ordersRows },
  { sheet: "Crew", rows: crewRows },
  { sheet: "Closed days", rows: closedDaysRows },
  { sheet: "Places", rows: placesRows },
  { sheet: "Prices", rows: pricesRows },
  { sheet: "Settings", rows: settingsRows(asOf) },
]);
