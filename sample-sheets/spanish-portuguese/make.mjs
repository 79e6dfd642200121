/**
 * Makes the workbook of this folder out of its csv: `node sample-sheets/spanish-portuguese/make.mjs`.
 */
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import { mergesDown, writeWorkbookFromCsv } from "../make/workbook-from-csv.mjs";

const folder = dirname(fileURLToPath(import.meta.url));

const varieties = mergesDown(folder, "lotes.csv", { column: "A", firstRow: 4, lastRow: 22 });

writeWorkbookFromCsv(folder, "spanish-portuguese", [
  { sheet: "Lotes", csv: "lotes.csv", merges: varieties },
]);
