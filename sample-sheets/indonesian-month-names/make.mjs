/**
 * Makes the workbook of this folder out of its csv: `node sample-sheets/indonesian-month-names/make.mjs`.
 */
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import { writeWorkbookFromCsv } from "../make/workbook-from-csv.mjs";

const folder = dirname(fileURLToPath(import.meta.url));

writeWorkbookFromCsv(folder, "indonesian-month-names", [
  { sheet: "Pembibitan", csv: "pembibitan.csv", merges: ["A1:R1"] },
]);
