/**
 * Makes the workbook of this folder out of its csv: `node sample-sheets/event-log/make.mjs`.
 */
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import { writeWorkbookFromCsv } from "../make/workbook-from-csv.mjs";

const folder = dirname(fileURLToPath(import.meta.url));

writeWorkbookFromCsv(folder, "event-log", [
  { sheet: "Log", csv: "log.csv" },
  { sheet: "Batches", csv: "batches.csv" },
]);
