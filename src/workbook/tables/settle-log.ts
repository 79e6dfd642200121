import { rowAndColumn } from "../host/cell-name";
import { NEW_COLUMN } from "../host/mark";
import { type RecordsNow, recordsNow } from "../reading/records-tab";
import { valueAt } from "../writing/moved-lines";
import { sameValue } from "../writing/table-write";
import { allOrNone } from "../writing/write-cells";
import {
  isUnsettled,
  type LogEntry,
  type LogState,
  openLog,
  type WriteLog,
} from "../writing/write-log";
import { findAgain, type PersonTable } from "./person-table";
import { isOrderLine, writtenTable } from "./written-table";

/** The records as they stand now, and the log, brought to the truth. For whoever has the lock. */
export function settledNow(): { readonly now: RecordsNow; readonly log: WriteLog } {
  const read = recordsNow();
  const log = openLog(read.workbook);
  return { now: settled(read, log), log };
}

/**
 * Brings the log to the truth where a run was cut off while it wrote: what was written whole is
 * "written"; what was written in part is put back; what can't be told is "not known".
 *
 * @returns the records as they stand then
 */
function settled(now: RecordsNow, log: WriteLog): RecordsNow {
  if (!log.hasUnsettled) return now;
  const writes = new Map<string, LogEntry[]>();
  for (const entry of log.entries()) {
    if (!isUnsettled(entry.state)) continue;
    writes.set(entry.id, [...(writes.get(entry.id) ?? []), entry]);
  }
  for (const entries of writes.values()) {
    const kept = entries.filter(({ cell }) => cell === "");
    const cells = entries.filter(({ cell }) => cell !== "");
    const state = stateOf(tableOf(now, cells), cells);
    log.mark([
      ...cells.map(({ row }) => ({ row, state })),
      ...kept.map(
        ({ row }) => ({ row, state: state === "written" ? "kept here" : state }) as const,
      ),
    ]);
  }
  return recordsNow();
}

function tableOf(now: RecordsNow, [entry]: readonly LogEntry[]): PersonTable | null {
  if (entry === undefined) return null;
  try {
    return writtenTable(now, entry);
  } catch {
    // The tab is gone, or is no table any more.
    return null;
  }
}

/** What became of one write, once what there is of it in part is undone. */
function stateOf(now: PersonTable | null, entries: readonly LogEntry[]): LogState {
  if (now === null) return "not known";
  try {
    const found = findAgain(now, entries);
    const written = found.cells.filter(({ holds, entry }) => sameValue(holds, entry.after));
    const blank = found.cells.filter(({ holds, entry }) => sameValue(holds, entry.before));
    if (written.length === found.cells.length) return "written";
    if (written.length + blank.length < found.cells.length) return "not known";
    if (blank.some(({ entry, cell }) => isElsewhere(now, entry, cell))) return "not known";
    if (written.length > 0) {
      allOrNone(now.sheet, [{ ...found, writes: written }], {
        known: now.values,
        end: () => undefined,
      });
    }
    return entries[0]?.state === "taking back" ? "taken back" : "not written";
  } catch {
    // A header that we added belongs to no batch: it stands where it was written, or not.
    if (
      entries.every(isNewHeader) &&
      entries.every(({ cell, after }) => sameValue(valueIn(now, cell), after))
    )
      return "written";
    // A row that was never begun, or is blank again, can't be found: then its cells are as they were.
    const untouched = entries.every(({ cell, before }) => sameValue(valueIn(now, cell), before));
    if (untouched && entries[0]?.state === "writing") return "not written";
    return untouched && entries.every(isOrderLine) ? "taken back" : "not known";
  }
}

function isNewHeader({ task }: LogEntry): boolean {
  return task === NEW_COLUMN;
}

/** Whether the cell that was meant holds it, though by now it is another batch's. */
function isElsewhere(now: PersonTable, { state, cell, after }: LogEntry, stands: string): boolean {
  return state === "writing" && cell !== stands && sameValue(valueIn(now, cell), after);
}

function valueIn({ values }: PersonTable, cell: string): unknown {
  const at = rowAndColumn(cell);
  return at === null ? undefined : valueAt(values, at.row, at.column);
}
