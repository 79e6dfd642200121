import type { Host } from "../door/index";
import { workbookHost } from "./workbook-host";

/** The present minute in the workbook's zone, as "2026-11-25 09:00". */
export function minuteNow(workbook: GoogleAppsScript.Spreadsheet.Spreadsheet): string {
  return minuteOf(workbookHost(workbook));
}

/** The same where the workbook's clock is at hand. */
export function minuteOf(host: Pick<Host, "wallTime">): string {
  return host.wallTime(Date.now()).slice(0, "2026-11-25 09:00".length);
}
