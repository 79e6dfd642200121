import { gridTab } from "../host/grid-tabs";
import { WritingError } from "../host/writing-error";
import { type RecordsNow, recordsNow } from "../reading/records-tab";
import type { LogEntry } from "../writing/write-log";
import { type FoundAgain, findAgain } from "./find-again";
import { NEW_ORDER, orderRowAgain } from "./order-row-again";
import { ordersIn } from "./orders-tab";

/** The table that a write went into, as it stands now. */
export interface WrittenTable extends Pick<RecordsNow, "workbook" | "sheet" | "door" | "values"> {
  /** @throws Error in a sentence when the cells can't be found again */
  findCells(entries: readonly LogEntry[]): FoundAgain;
}

/**
 * The table of a line of the log.
 *
 * @throws Error in a sentence when its tab is gone, or is no such table any more
 */
export function writtenTable(now: RecordsNow, entry: LogEntry): WrittenTable {
  const { workbook, door } = now;
  if (!isOrderLine(entry)) {
    // A tab that is not there any more was renamed: the records are what they were.
    const isNow = entry.tab === now.tab || workbook.getSheetByName(entry.tab) === null;
    const own = isNow ? now : recordsNow(entry.tab);
    return { ...own, findCells: (entries) => findAgain(own, entries) };
  }
  const sheet = gridTab(workbook, entry.tab);
  const table = sheet === null ? null : ordersIn(sheet, door);
  if (table === null) {
    throw new WritingError({ code: "noOrders", tab: entry.tab });
  }
  return { workbook, door, ...table, findCells: (entries) => orderRowAgain(table, door, entries) };
}

/** Whether a line of the log is a cell of an order that we added. */
export function isOrderLine({ task }: LogEntry): boolean {
  return task === NEW_ORDER;
}
