import { COMING } from "../host/mark";
import { fillAgain } from "./fill-again";
import type { MovedNote } from "./notes-in-the-way";
import { mustBeOurs } from "./own-tabs";
import { fillTab, type TabContent } from "./tab-content";

type Workbook = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/**
 * Makes a tab of ours. One that is there is filled again and stays the same sheet, so that whatever
 * points at it lives on. A new one is filled under another name first: whatever stops the work leaves
 * no half made tab of its name, and what it leaves beside is swept at the next run.
 *
 * @param mayFill asked just before the rows of the old one are written over; what it throws leaves
 *   them in place
 * @returns notes of a person's that stood in the way of an answer, and where they stand now
 * @throws Error when a tab of that name is the person's own
 */
export function makeTab(
  workbook: Workbook,
  content: TabContent,
  mayFill: (old: Sheet) => void = () => undefined,
): readonly MovedNote[] {
  const { name } = content;
  const old = workbook.getSheetByName(name);
  if (old !== null) {
    mustBeOurs(old);
    return fillAgain(old, content, mayFill);
  }
  const fresh = workbook.insertSheet(
    freeName(workbook, `${name} ${COMING}`),
    content.before ? content.before - 1 : workbook.getSheets().length,
  );
  try {
    fillTab(fresh, content);
    fresh.setName(name);
  } catch (error) {
    // A call whose answer got lost may have done its work.
    if (fresh.getName() !== name) removeLater(workbook, fresh);
    throw error;
  }
  return [];
}

/**
 * Does what may make new tabs, and shows again the tab that was in front: every new tab comes to the
 * front by itself.
 */
export function keepingView<Result>(workbook: Workbook, work: () => Result): Result {
  const before = workbook.getActiveSheet();
  try {
    return work();
  } finally {
    if (workbook.getActiveSheet().getSheetId() !== before.getSheetId()) {
      workbook.setActiveSheet(before);
    }
  }
}

/** A tab that can't be deleted now is swept at the next run. */
function removeLater(workbook: Workbook, sheet: Sheet): void {
  try {
    workbook.deleteSheet(sheet);
  } catch {
    // Nothing is lost by a tab too many.
  }
}

function freeName(workbook: Workbook, wished: string): string {
  let free = wished;
  for (let number = 2; workbook.getSheetByName(free) !== null; number += 1) {
    free = `${wished} ${number}`;
  }
  return free;
}
