import type { CellWritten } from "../../wire/writing";
import { plainText, type RecordsNow } from "../reading/records-tab";
import type { CellWrite } from "../writing/table-write";
import type { LoggedCell } from "../writing/write-log";

/** A cell that is to be written, or holds what it would get already. */
export type PlannedCell = CellWrite & LoggedCell;

/** The same as the page shows it. */
export function cellShown(now: RecordsNow, { tab, cell, header, after }: PlannedCell): CellWritten {
  return { where: `${tab}!${cell}`, header, value: plainText(now.door, after) };
}
