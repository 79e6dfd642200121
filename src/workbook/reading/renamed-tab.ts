import { gridTab } from "../host/grid-tabs";
import { DUE_TOP } from "../tabs/due-columns";
import { dueTabOf } from "../tabs/due-tab-found";
import { isOurs, type TabCells, tabCells } from "../tabs/own-tabs";

type Workbook = GoogleAppsScript.Spreadsheet.Spreadsheet;

/**
 * The records tab under another name than the settings tell. The spreadsheet follows a tab that is
 * renamed in every formula, so that of the due list's age names it by now; beside stands the name
 * that it had when the list was made.
 *
 * @param wanted the name in the settings: where the list was made of another, it is a wrong name and
 *   no old one
 */
export function renamedTab(
  workbook: Workbook,
  wanted: string,
  timetableTab: string | null,
): TabCells | null {
  if (workbook.getSheetByName(wanted) !== null) return null;
  const list = dueTabOf(workbook);
  if (list === null || String(list.getRange(1, DUE_TOP.recordsTab).getValue()) !== wanted)
    return null;
  const formula = list.getRange(1, DUE_TOP.age).getFormula();
  for (const [, quoted, plain = ""] of formula.matchAll(NAMED)) {
    const name = quoted?.replace(/''/g, "'") ?? plain;
    const sheet = name === timetableTab ? null : gridTab(workbook, name);
    if (sheet !== null && !isOurs(sheet)) return tabCells(workbook, name);
  }
  return null;
}

/** A tab's name before "!", in quotes or not. */
const NAMED = /'((?:[^']|'')+)'!|([\p{L}\p{N}_.]+)!/gu;
