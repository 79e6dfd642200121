import {
  CREW_TAB,
  isOurs,
  isPlan,
  notOursSentence,
  ORDERS_TAB,
  OWN_TABS,
  PLAN_TAB,
} from "./own-tabs";
import { fillTab, type TabContent } from "./tab-content";

/**
 * Makes a tab of ours anew: a new tab is filled, the old one steps aside, the new one takes its
 * name, and only then the old one goes. Whatever stops the work leaves the old tab or the new one,
 * whole; what it leaves beside is swept at the next run.
 *
 * @param mayGo asked just before the old tab steps aside; what it throws leaves the old one in place
 * @throws Error when a tab of that name is the person's own
 */
export function replaceTab(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
  content: TabContent,
  mayGo: (old: GoogleAppsScript.Spreadsheet.Sheet) => void = () => undefined,
): void {
  const { name } = content;
  const old = workbook.getSheetByName(name);
  if (old !== null && !isOurs(old)) throw new Error(notOursSentence(name));
  const fresh = workbook.insertSheet(
    freeName(workbook, `${name} (new)`),
    workbook.getSheets().length,
  );
  try {
    fillTab(fresh, content);
    if (old !== null) {
      mayGo(old);
      old.setName(freeName(workbook, `${name} (old)`));
    }
    fresh.setName(name);
  } catch (error) {
    undo(workbook, name, old, fresh);
    throw error;
  }
  if (old !== null) removeLater(workbook, old);
}

/** Gives the old tab its name back, unless the new one bears it already. */
function undo(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
  name: string,
  old: GoogleAppsScript.Spreadsheet.Sheet | null,
  fresh: GoogleAppsScript.Spreadsheet.Sheet,
): void {
  // A call whose answer got lost may have done its work.
  if (fresh.getName() === name) {
    if (old !== null) removeLater(workbook, old);
    return;
  }
  if (old !== null && old.getName() !== name) old.setName(name);
  removeLater(workbook, fresh);
}

/** A tab that can't be deleted now is swept at the next run. */
function removeLater(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
  sheet: GoogleAppsScript.Spreadsheet.Sheet,
): void {
  try {
    workbook.deleteSheet(sheet);
  } catch {
    // Nothing is lost by a tab too many.
  }
}

const ASIDE = /^(.+) \((new|old)\)(?: \d+)?$/;

/**
 * Puts right what a run that was cut off has left: a tab of ours that had only stepped aside gets its
 * name back, half made ones and those that were replaced go.
 */
export function sweepLeftovers(workbook: GoogleAppsScript.Spreadsheet.Spreadsheet): void {
  const left = workbook.getSheets().flatMap((sheet) => {
    const [, name, side] = ASIDE.exec(sheet.getName()) ?? [];
    return name !== undefined && isLeftover(sheet, name, side) ? [{ sheet, name, side }] : [];
  });
  for (const { sheet, name } of left.filter(({ side }) => side === "old")) {
    if (workbook.getSheetByName(name) === null) sheet.setName(name);
    else workbook.deleteSheet(sheet);
  }
  for (const { sheet } of left.filter(({ side }) => side === "new")) workbook.deleteSheet(sheet);
}

const OWN: ReadonlySet<string> = new Set(Object.values(OWN_TABS));
const TO_FILL: ReadonlySet<string> = new Set([CREW_TAB, ORDERS_TAB]);
/** Rows of a tab to be filled as we make it: what it is, and the header. */
const UNFILLED = 2;

/** Ours, or not even begun to be filled. A tab in which a person has put something is theirs. */
function isLeftover(
  sheet: GoogleAppsScript.Spreadsheet.Sheet,
  name: string,
  side: string | undefined,
): boolean {
  // One that a person has filled and renamed begins as ours do, and is never replaced by us.
  if (TO_FILL.has(name)) {
    const rows = side === "new" ? sheet.getLastRow() : Number.POSITIVE_INFINITY;
    return rows === 0 || (rows <= UNFILLED && isOurs(sheet));
  }
  if (name.startsWith(`${PLAN_TAB} `)) return sheet.getLastRow() === 0 || isPlan(sheet);
  return OWN.has(name) && (sheet.getLastRow() === 0 || isOurs(sheet));
}

function freeName(workbook: GoogleAppsScript.Spreadsheet.Spreadsheet, wished: string): string {
  let free = wished;
  for (let number = 2; workbook.getSheetByName(free) !== null; number += 1) {
    free = `${wished} ${number}`;
  }
  return free;
}
