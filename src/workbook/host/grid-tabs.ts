type Workbook = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/**
 * The tabs that have cells. A workbook's list of sheets also holds charts on a sheet of their own,
 * timelines and connected sources, on which any look at a cell throws.
 *
 * Source: diegomanuel/binance-to-google-sheets#13; reference page of SheetType.
 */
export function gridTabs(workbook: Workbook): readonly Sheet[] {
  return workbook.getSheets().filter(hasCells);
}

/** The tab of a name; null when there is none, or it has no cells. */
export function gridTab(workbook: Workbook, name: string): Sheet | null {
  const sheet = workbook.getSheetByName(name);
  return sheet !== null && hasCells(sheet) ? sheet : null;
}

export function hasCells(sheet: Sheet): boolean {
  return sheet.getType() === SpreadsheetApp.SheetType.GRID;
}
