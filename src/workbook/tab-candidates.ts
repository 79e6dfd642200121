import type { Timetable } from "../core";
import { openDoor } from "../door/index";
import { isOurs } from "./own-tabs";
import type { TabCandidate } from "./sidebar-calls";
import { workbookHost } from "./workbook-host";

/** Tabs in which batches can be read, most batches first. Tabs of ours are no records. */
export function recordTabCandidates(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
  timetable: Timetable,
): readonly TabCandidate[] {
  return workbook
    .getSheets()
    .filter((sheet) => !isOurs(sheet))
    .map((sheet) => ({ tab: sheet.getName(), batches: batchesIn(sheet, timetable) }))
    .filter(({ batches }) => batches > 0)
    .sort((a, b) => b.batches - a.batches);
}

function batchesIn(sheet: GoogleAppsScript.Spreadsheet.Sheet, timetable: Timetable): number {
  try {
    const { batches, columns } = openDoor(workbookHost()).records(
      sheet.getDataRange().getValues(),
      { timetable, asOf: null, columns: "" },
    );
    // A timetable names steps too, but no batches.
    const named = columns.some(({ target }) => target?.kind === "fact" && target.fact === "batch");
    return named ? batches.length : 0;
  } catch {
    // No header of batches in it: another kind of tab.
    return 0;
  }
}
