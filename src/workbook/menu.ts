import { refresh } from "./set-up";
import { recordTicked } from "./ticked-tasks";

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

export function refreshDueList(): void {
  refresh();
  SpreadsheetApp.getActiveSpreadsheet().toast("The due list is made anew");
}

export function writeTicked(): void {
  const recorded = recordTicked();
  SpreadsheetApp.getActiveSpreadsheet().toast(
    recorded === 1 ? "1 task written" : `${recorded} tasks written`,
  );
}
