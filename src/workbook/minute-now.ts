/** The present minute in the workbook's zone, as "2026-11-25 09:00". */
export function minuteNow(workbook: GoogleAppsScript.Spreadsheet.Spreadsheet): string {
  return Utilities.formatDate(new Date(), workbook.getSpreadsheetTimeZone(), "yyyy-MM-dd HH:mm");
}
