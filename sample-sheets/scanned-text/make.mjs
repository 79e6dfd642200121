/**
 * Makes the workbook of this folder out of its csv: `node sample-sheets/scanned-text/make.mjs`.
 */
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import { writeWorkbookFromCsv } from "../make/workbook-from-csv.mjs";

const folder = dirname(fileURLToPath(import.meta.url));

writeWorkbookFromCsv(folder, "scanned-text", [{ sheet: "Pages", csv: "pages.csv", allText: true }]);
