/**
 * Makes the workbook of this folder out of its csv: `node sample-sheets/lots-and-grafts/make.mjs`.
 */
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import { writeWorkbookFromCsv } from "../make/workbook-from-csv.mjs";

const folder = dirname(fileURLToPath(import.meta.url));

writeWorkbookFromCsv(folder, "lots-and-grafts", [
  { sheet: "Lots", csv: "lots.csv" },
  { sheet: "Grafts", csv: "grafts.csv" },
]);
