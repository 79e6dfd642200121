/**
 * Makes the workbook of this folder out of its csv: `node sample-sheets/french-two-row-header/make.mjs`.
 */
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import { writeWorkbookFromCsv } from "../make/workbook-from-csv.mjs";

const folder = dirname(fileURLToPath(import.meta.url));

const singleColumns = ["A", "B", "C", "D", "E", "P", "Q", "R"].map(
  (column) => `${column}4:${column}5`,
);
const groups = ["F4:G4", "H4:I4", "J4:K4", "L4:M4", "N4:O4"];

writeWorkbookFromCsv(folder, "french-two-row-header", [
  { sheet: "Registre", csv: "registre.csv", merges: [...singleColumns, ...groups, "A1:R1"] },
]);
