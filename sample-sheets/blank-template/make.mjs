/**
 * Makes the sheets of this folder: `node sample-sheets/blank-template/make.mjs`.
 * Another folder may be named to write there instead.
 */
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import { dayFromIso } from "../make/days.mjs";
import { settingsRows } from "../make/settings-sheet.mjs";
import { writeSheetFiles } from "../make/sheet-files.mjs";
import {
  closedDaysHeader,
  crewHeader,
  ordersHeader,
  placesHeader,
  pricesHeader,
  recordsHeader,
} from "../make/sheet-headers.mjs";
import { timetableRows } from "../make/timetable-sheet.mjs";

writeSheetFiles(process.argv[2] ?? dirname(fileURLToPath(import.meta.url)), "blank-template", [
  { sheet: "Records", rows: [recordsHeader] },
  { sheet: "Timetable", rows: timetableRows() },
  { sheet: "Orders", rows: [ordersHeader] },
  { sheet: "Crew", rows: [crewHeader] },
  { sheet: "Closed days", rows: [closedDaysHeader] },
  { sheet: "Places", rows: [placesHeader] },
  { sheet: "Prices", rows: [pricesHeader] },
  { sheet: "Settings", rows: settingsRows(dayFromIso("2026-11-25")) },
]);
