import { gridTab } from "../host/grid-tabs";
import { WritingError } from "../host/writing-error";
import { type RecordsNow, recordsNow } from "../reading/records-tab";
import type { LogEntry } from "../writing/write-log";
import { ordersIn } from "./orders-tab";
import { NEW_ORDER, ordersTable } from "./orders-table";
import type { PersonTable } from "./person-table";
import { recordsTable } from "./records-table";

/**
 * The table that a line of the log went into, as it stands now.
 *
 * @throws Error in a sentence when its tab is gone, or is no such table any more
 */
export function writtenTable(now: RecordsNow, entry: LogEntry): PersonTable {
  const { workbook, door } = now;
  if (!isOrderLine(entry)) {
    // A tab that is not there any more was renamed: the records are what they were.
    const isNow = entry.tab === now.tab || workbook.getSheetByName(entry.tab) === null;
    return recordsTable(isNow ? now : recordsNow(entry.tab));
  }
  const sheet = gridTab(workbook, entry.tab);
  const table = sheet === null ? null : ordersIn(sheet, door);
  if (table === null) {
    throw new WritingError({ code: "noOrders", tab: entry.tab });
  }
  return ordersTable(table, door);
}

/** Whether a line of the log is a cell of an order that we added. */
export function isOrderLine({ task }: LogEntry): boolean {
  return task === NEW_ORDER;
}
