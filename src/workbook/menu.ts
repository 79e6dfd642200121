/** The add-in's menu, made when the spreadsheet opens. Nothing else may happen there. */
export function addMenu(): void {
  SpreadsheetApp.getUi().createMenu("Nursery").addItem("Open the guide", "showGuide").addToUi();
}

/** Opens the sidebar. */
export function openGuide(): void {
  SpreadsheetApp.getUi().showSidebar(
    HtmlService.createHtmlOutputFromFile("Sidebar").setTitle("Nursery batches"),
  );
}
