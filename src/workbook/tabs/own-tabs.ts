import { gridTab, hasCells } from "../host/grid-tabs";
import { FIRST_WORDS, MARK } from "../host/mark";
import { WritingError } from "../host/writing-error";
import { isOursWithoutTitle } from "./own-heads";

/** The tabs that the add-in makes. It writes to these, and to cells that a person has confirmed. */
export const OWN_TABS = {
  settings: "Nursery settings",
  timetable: "Nursery timetable",
  due: "Due list",
  stages: "Stages",
  ready: "Ready by month",
  takes: "Takes",
  takesCompared: "Takes compared",
  takesTrend: "Takes by month",
  takeReasons: "What takes go with",
  checks: "Checks",
  workPlan: "Work plan",
  lookback: "Look back",
  balance: "Where plants went",
  losses: "Plants lost",
  places: "Places by week",
  needs: "Needs ahead",
  costs: "Batch costs",
  germination: "How seed came up",
  overview: "Nursery overview",
  log: "Write log",
} as const;

/** Those of them that are made where a person has chosen them. */
export const CHOSEN_TABS = [
  "lookback",
  "balance",
  "losses",
  "places",
  "needs",
  "costs",
  "germination",
] as const;
export type ChosenTab = (typeof CHOSEN_TABS)[number];

/**
 * Names of the tabs that we make empty for the person to fill. They are the person's from then on,
 * and many a workbook has a tab of such a name of its own, so that they are none of OWN_TABS.
 */
export const CREW_TAB = "Crew";
export const ORDERS_TAB = "Orders";

/** Plans of orders are tabs of ours, and are named after their orders. */
export const PLAN_TAB = "Plan";

const TO_FILL = `${MARK} ${FIRST_WORDS.toFill} `;

/** Whether a first cell is that of a tab that we make and the person does not fill. */
export function beginsAsOurs(first: unknown): boolean {
  const text = String(first);
  return text.startsWith(MARK) && !text.startsWith(TO_FILL);
}

/** Whether a tab is a plan of an order that we made. */
export function isPlan(sheet: GoogleAppsScript.Spreadsheet.Sheet): boolean {
  const first = String(sheet.getRange(1, 1).getValue());
  if (first.startsWith(MARK)) return first.startsWith(`${MARK} ${FIRST_WORDS.plan}`);
  return sheet.getName().startsWith(`${PLAN_TAB} `) && isOursWithoutTitle(sheet);
}

/** Our tab of a name; null when there is none, or a tab of that name is not ours. */
export function ownTab(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
  name: string,
): GoogleAppsScript.Spreadsheet.Sheet | null {
  const sheet = gridTab(workbook, name);
  return sheet !== null && isOurs(sheet) ? sheet : null;
}

/** A tab with all its values. */
export interface TabCells {
  readonly sheet: GoogleAppsScript.Spreadsheet.Sheet;
  readonly values: readonly (readonly unknown[])[];
}

/** The same with its values, in as few calls as can be; null as above. */
export function ownCells(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
  name: string,
): TabCells | null {
  const cells = tabCells(workbook, name);
  if (cells === null) return null;
  return beginsWithMark(cells.values) || isOurs(cells.sheet) ? cells : null;
}

/** The tab of a name with its values; null when there is none, or it has no cells. */
export function tabCells(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
  name: string,
): TabCells | null {
  const sheet = workbook.getSheetByName(name);
  if (sheet === null) return null;
  try {
    return { sheet, values: sheet.getDataRange().getValues() };
  } catch (error) {
    if (hasCells(sheet)) throw error;
    return null;
  }
}

/** Whether the first of a tab's cells is that of one of ours. */
export function beginsWithMark(values: TabCells["values"]): boolean {
  return String(values[0]?.[0]).startsWith(MARK);
}

/** Whether a tab begins as ours do, or is one of ours whose first line a person has taken away. */
export function isOurs(sheet: GoogleAppsScript.Spreadsheet.Sheet): boolean {
  return String(sheet.getRange(1, 1).getValue()).startsWith(MARK) || isOursWithoutTitle(sheet);
}

/** @throws Error when a tab that is the person's own bears the name of one of ours */
export function mustBeFree(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
  names: readonly string[],
): void {
  // A workbook takes "due list" and "Due list" for one name.
  const wanted = new Set(names.map((name) => name.toLowerCase()));
  for (const sheet of workbook.getSheets()) {
    const name = sheet.getName();
    if (wanted.has(name.toLowerCase())) mustBeOurs(sheet);
  }
}

/** @throws Error in a sentence when a tab that bears the name of one of ours is not ours */
export function mustBeOurs(sheet: GoogleAppsScript.Spreadsheet.Sheet): void {
  const name = sheet.getName();
  if (!hasCells(sheet)) {
    throw new WritingError({ code: "noCells", tab: name });
  }
  if (isOurs(sheet)) return;
  throw new WritingError({ code: "notOurs", tab: name });
}
