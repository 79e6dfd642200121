import { hasCells } from "../host/grid-tabs";
import { COMING, GOING } from "../host/mark";
import { CREW_TAB, isOurs, isPlan, ORDERS_TAB, OWN_TABS, PLAN_TAB } from "./own-tabs";

type Workbook = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

const SIDES = [COMING, GOING].map((side) => side.replace(/[()]/g, "\\$&"));
const ASIDE = new RegExp(`^(.+) (${SIDES.join("|")})(?: \\d+)?$`);

/**
 * Puts right what a run that was cut off has left: half made tabs go, and a tab of ours that an older
 * add-in had only put aside gets its name back.
 */
export function sweepLeftovers(workbook: Workbook): void {
  const left = workbook.getSheets().flatMap((sheet) => {
    const [, name, side] = ASIDE.exec(sheet.getName()) ?? [];
    if (name === undefined || !hasCells(sheet)) return [];
    return isLeftover(sheet, name, side) ? [{ sheet, name, side }] : [];
  });
  for (const { sheet, name } of left.filter(({ side }) => side === GOING)) {
    if (workbook.getSheetByName(name) === null) sheet.setName(name);
    else workbook.deleteSheet(sheet);
  }
  for (const { sheet } of left.filter(({ side }) => side === COMING)) workbook.deleteSheet(sheet);
}

const OWN: ReadonlySet<string> = new Set(Object.values(OWN_TABS));
const TO_FILL: ReadonlySet<string> = new Set([CREW_TAB, ORDERS_TAB]);
/** Rows of a tab to be filled as we make it: what it is, and the header. */
const UNFILLED = 2;

/** Ours, or not even begun to be filled. A tab in which a person has put something is theirs. */
function isLeftover(sheet: Sheet, name: string, side: string | undefined): boolean {
  // One that a person has filled and renamed begins as ours do, and is never replaced by us.
  if (TO_FILL.has(name)) {
    const rows = side === COMING ? sheet.getLastRow() : Number.POSITIVE_INFINITY;
    return rows === 0 || (rows <= UNFILLED && isOurs(sheet));
  }
  if (name.startsWith(`${PLAN_TAB} `)) return sheet.getLastRow() === 0 || isPlan(sheet);
  return OWN.has(name) && (sheet.getLastRow() === 0 || isOurs(sheet));
}
