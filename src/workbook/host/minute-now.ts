import type { Host } from "../../door/index";
import { workbookHost } from "./workbook-host";

/** The present minute in the workbook's zone, as "2026-11-25 09:00". */
export function minuteNow(workbook: GoogleAppsScript.Spreadsheet.Spreadsheet): string {
  return minuteOf(workbookHost(workbook), new Date());
}

/** A minute where the workbook's clock is at hand. */
export function minuteOf(host: Pick<Host, "wallTime">, instant: Date): string {
  return host.wallTime(instant.getTime()).slice(0, "2026-11-25 09:00".length);
}
