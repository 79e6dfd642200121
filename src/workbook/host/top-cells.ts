type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** The upper left cells of a tab, as far as it has so many. */
export function topCells(
  sheet: Sheet,
  rows: number,
  columns: number,
): GoogleAppsScript.Spreadsheet.Range {
  const [high, wide] = [sheet.getMaxRows(), sheet.getMaxColumns()];
  return sheet.getRange(1, 1, Math.min(rows, high), Math.min(columns, wide));
}
