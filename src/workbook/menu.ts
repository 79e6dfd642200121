import { refreshDueTab } from "./due-tab";
import { refreshStillTabs } from "./formula-tabs";
import { withLock } from "./lock";
import { OWN_TABS, ownTab } from "./own-tabs";
import { recordsNow } from "./records-tab";
import { sweepLeftovers } from "./swap-tab";
import { recordTicked, recordTickedUnderLock } from "./ticked-tasks";

/** The add-in's menu, made when the spreadsheet opens. Nothing else may happen there. */
export function addMenu(): void {
  SpreadsheetApp.getUi()
    .createMenu("Nursery")
    .addItem("Open the sidebar", "showSidebar")
    .addItem("Refresh the due list", "refreshDueList")
    .addItem("Write ticked tasks", "writeTicked")
    .addToUi();
}

export function openSidebar(): void {
  SpreadsheetApp.getUi().showSidebar(
    HtmlService.createHtmlOutputFromFile("Sidebar").setTitle("Nursery batches"),
  );
}

/** Writes what is ticked, then makes the due list anew; the other tabs are live. */
export function refreshDueList(): void {
  withLock(() => {
    const workbook = SpreadsheetApp.getActiveSpreadsheet();
    sweepLeftovers(workbook);
    const written =
      ownTab(workbook, OWN_TABS.due) === null ? undefined : recordTickedUnderLock().inRecords;
    const now = recordsNow();
    refreshDueTab(now, written);
    refreshStillTabs(now);
  });
  SpreadsheetApp.getActiveSpreadsheet().toast("The due list is made anew");
}

export function writeTicked(): void {
  const { recorded, refused } = recordTicked();
  const written = recorded === 1 ? "1 task written" : `${recorded} tasks written`;
  const not = refused === 0 ? "" : `; ${refused} not written: the due list says why`;
  SpreadsheetApp.getActiveSpreadsheet().toast(`${written}${not}`);
}
