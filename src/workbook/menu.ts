import * as text from "../sentences/made/menu";
import { refreshDueTab } from "./due/due-tab";
import { recordTicked, recordTickedUnderLock } from "./due/ticked-tasks";
import { withLock } from "./host/lock";
import { troubleSentence } from "./host/writing-error";
import { recordsNow } from "./reading/records-tab";
import { freeBlockedTabs } from "./set-up/blocked-tabs";
import { refreshStillTabs } from "./set-up/formula-tabs";
import { makeOverview } from "./set-up/overview-tab";
import { keepDayGoing } from "./settings/day-kept-going";
import { dueTabOf } from "./tabs/due-tab-found";
import { sweepLeftovers } from "./tabs/leftovers";
import { keepingView } from "./tabs/make-tab";
import { movedNames } from "./tabs/notes-in-the-way";
import { OWN_TABS, ownTab } from "./tabs/own-tabs";
import { straightenTimetable } from "./tabs/timetable-tab";

/**
 * The add-in's menu, made when the spreadsheet opens or the add-on is installed. Nothing else may
 * happen there: an add-on that a workbook has not yet begun to use may not even look at it.
 *
 * Source: developers.google.com/workspace/add-ons/concepts/menus and .../editor-auth-lifecycle.
 */
export function addMenu(): void {
  const ui = SpreadsheetApp.getUi();
  const menu = isPublishedAddOn() ? ui.createAddonMenu() : ui.createMenu(text.menu());
  menu
    .addItem(text.open(), "showSidebar")
    .addItem(text.refresh(), "refreshDueList")
    .addItem(text.writeTicked(), "writeTicked")
    .addToUi();
}

/**
 * Whether the script came with an add-on from the marketplace, whose menu stands under Extensions
 * with its name. Where that can't be asked, a menu of our own is made, which the platform moves there.
 */
function isPublishedAddOn(): boolean {
  try {
    return ScriptApp.getInstallationSource() !== ScriptApp.InstallationSource.NONE;
  } catch {
    return false;
  }
}

export function openSidebar(): void {
  try {
    withLock(() => keepDayGoing(SpreadsheetApp.getActiveSpreadsheet()));
  } catch {
    // Whoever may not write, or comes while another does, is shown the page all the same.
  }
  SpreadsheetApp.getUi().showSidebar(
    HtmlService.createHtmlOutputFromFile("Sidebar").setTitle(text.title()),
  );
}

/** Writes what is ticked, then makes the due list anew; the other tabs are live. */
export function refreshDueList(): void {
  fromMenu(() => {
    const moved = withLock(() => {
      const workbook = SpreadsheetApp.getActiveSpreadsheet();
      sweepLeftovers(workbook);
      keepDayGoing(workbook);
      const written = dueTabOf(workbook) === null ? undefined : recordTickedUnderLock().inRecords;
      straightenTimetable(workbook);
      return keepingView(workbook, () => {
        const now = recordsNow();
        const list = refreshDueTab(now, written);
        refreshStillTabs(now);
        if (ownTab(workbook, OWN_TABS.overview) !== null) makeOverview(workbook);
        return [...list.moved, ...freeBlockedTabs(now)];
      });
    });
    return text.dueListRefreshed({ some: moved.length, moved: movedNames(moved) });
  });
}

export function writeTicked(): void {
  fromMenu(() => text.written(recordTicked()));
}

/**
 * Does what a menu item stands for, and says what it says.
 *
 * @throws Error with a sentence: the spreadsheet shows it in a box of its own
 */
function fromMenu(work: () => string): void {
  let done: string;
  try {
    done = work();
  } catch (error) {
    throw new Error(troubleSentence(error));
  }
  SpreadsheetApp.getActiveSpreadsheet().toast(done);
}
