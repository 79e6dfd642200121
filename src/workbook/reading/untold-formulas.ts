import { cellName } from "../host/cell-name";
import { callsIn, type FormulaCall } from "../host/formula-calls";
import { gridTabs } from "../host/grid-tabs";
import type { Settings } from "../settings/settings";
import { isOurs } from "../tabs/own-tabs";
import { RECORDS_ARGUMENTS } from "./records-arguments.table";

/** A person's own formulas stand at the top of a tab; more is not looked at, so that Check stays quick. */
const MOST_TABS = 30;
const MOST_ROWS = 200;
const MOST_COLUMNS = 52;

/**
 * Cells of the person's own tabs, as "Overview!B3", whose formulas read the records tab without what Set
 * up was told of its columns and words. A function sees its arguments alone, and can't know by itself.
 *
 * @returns none where nothing was told; formulas that name the records otherwise are passed over
 */
export function untoldFormulas(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
  { recordsTab, columns }: Pick<Settings, "recordsTab" | "columns">,
): readonly string[] {
  if (columns.length === 0) return [];
  return gridTabs(workbook)
    .filter((sheet) => !isOurs(sheet))
    .slice(0, MOST_TABS)
    .flatMap((sheet) => {
      const rows = Math.min(sheet.getLastRow(), MOST_ROWS);
      const width = Math.min(sheet.getLastColumn(), MOST_COLUMNS);
      if (rows === 0 || width === 0) return [];
      const name = sheet.getName();
      return sheet
        .getRange(1, 1, rows, width)
        .getFormulas()
        .flatMap((cells, row) =>
          cells.flatMap((formula, column) => {
            const isUntold = callsIn(formula).some((call) =>
              readsUntold(call, { recordsTab, isThere: name === recordsTab }),
            );
            return isUntold ? [`${name}!${cellName({ row: row + 1, column: column + 1 })}`] : [];
          }),
        );
    });
}

/** @param where.isThere whether the formula stands in the records tab itself, and need not name it */
function readsUntold(
  call: FormulaCall,
  where: { readonly recordsTab: string; readonly isThere: boolean },
): boolean {
  const [, records, columns] =
    new RegExp(`\\b${call.name} (\\d+) (\\d+)`).exec(RECORDS_ARGUMENTS) ?? [];
  const given = (at: string | undefined) => (call.arguments[Number(at)] ?? "").trim();
  if (records === undefined || given(columns) !== "") return false;
  const range = given(records);
  const [, tab] = /^(.*)![^!]*$/.exec(range) ?? [];
  if (tab === undefined) return where.isThere && range.includes(":");
  return tab.replace(/^'|'$/g, "").replace(/''/g, "'") === where.recordsTab;
}
