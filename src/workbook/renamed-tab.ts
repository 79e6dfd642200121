import { gridTab } from "./grid-tabs";
import { isOurs, OWN_TABS, type TabCells, tabCells } from "./own-tabs";

type Workbook = GoogleAppsScript.Spreadsheet.Spreadsheet;

/** Formulas of ours that name the records stand within these rows and columns. */
const LOOKED_AT = { rows: 3, columns: 4 };

/**
 * The records tab under another name than the settings tell: the spreadsheet follows a tab that is
 * renamed in every formula, so those of our live tabs name it.
 *
 * @returns null when no formula names a tab that is there and not ours
 */
export function renamedTab(workbook: Workbook, timetableTab: string | null): TabCells | null {
  for (const own of [OWN_TABS.due, OWN_TABS.stages]) {
    for (const name of tabsNamedIn(workbook, own)) {
      const sheet = name === timetableTab ? null : gridTab(workbook, name);
      if (sheet !== null && !isOurs(sheet)) return tabCells(workbook, name);
    }
  }
  return null;
}

/** A tab's name before "!", in quotes or not. */
const NAMED = /'((?:[^']|'')+)'!|([\p{L}\p{N}_.]+)!/gu;

function tabsNamedIn(workbook: Workbook, own: string): readonly string[] {
  const sheet = gridTab(workbook, own);
  if (sheet === null || !isOurs(sheet)) return [];
  const rows = Math.min(LOOKED_AT.rows, sheet.getMaxRows());
  const columns = Math.min(LOOKED_AT.columns, sheet.getMaxColumns());
  const formulas = sheet.getRange(1, 1, rows, columns).getFormulas().flat();
  return formulas.flatMap((formula) =>
    [...formula.matchAll(NAMED)].map(
      ([, quoted, plain = ""]) => quoted?.replace(/''/g, "'") ?? plain,
    ),
  );
}
