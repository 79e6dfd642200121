import { placeOfCell } from "./cell-name";
import { type RecordsNow, recordsNow } from "./records-tab";
import { allOrNone, sameValue } from "./write-cells";
import {
  hasUnsettled,
  isUnsettled,
  type LogEntry,
  type LogState,
  logEntries,
  markLog,
} from "./write-log";
import { isOrderLine, type WrittenTable, writtenTable } from "./written-table";

/**
 * Brings the log to the truth where a run was cut off while it wrote: what was written whole is
 * "written"; what was written in part is put back; what can't be told is "not known".
 *
 * @returns the records as they stand then
 */
export function settleLog(now: RecordsNow): RecordsNow {
  if (!hasUnsettled(now.workbook)) return now;
  const writes = new Map<string, LogEntry[]>();
  for (const entry of logEntries(now.workbook)) {
    if (!isUnsettled(entry.state)) continue;
    writes.set(entry.id, [...(writes.get(entry.id) ?? []), entry]);
  }
  for (const entries of writes.values()) {
    const kept = entries.filter(({ cell }) => cell === "");
    const cells = entries.filter(({ cell }) => cell !== "");
    const state = settled(tableOf(now, cells), cells);
    markLog(now.workbook, [
      ...cells.map(({ row }) => ({ row, state })),
      ...kept.map(
        ({ row }) => ({ row, state: state === "written" ? "kept here" : state }) as const,
      ),
    ]);
  }
  return recordsNow();
}

function tableOf(now: RecordsNow, [entry]: readonly LogEntry[]): WrittenTable | null {
  if (entry === undefined) return null;
  try {
    return writtenTable(now, entry);
  } catch {
    // The tab is gone, or is no table any more.
    return null;
  }
}

/** What became of one write, once what there is of it in part is undone. */
function settled(now: WrittenTable | null, entries: readonly LogEntry[]): LogState {
  if (now === null) return "not known";
  try {
    const { cells, landmarks } = now.again(entries);
    const written = cells.filter(({ holds, entry }) => sameValue(holds, entry.after));
    const blank = cells.filter(({ holds, entry }) => sameValue(holds, entry.before));
    if (written.length === cells.length) return "written";
    if (written.length + blank.length < cells.length) return "not known";
    allOrNone(now.sheet, written, landmarks, () => undefined);
    return entries[0]?.state === "taking back" ? "taken back" : "not written";
  } catch {
    // A row that was never begun, or is blank again, can't be found: then its cells are as they were.
    const untouched = entries.every(({ cell, before }) => sameValue(valueAt(now, cell), before));
    if (untouched && entries[0]?.state === "writing") return "not written";
    return untouched && entries.every(isOrderLine) ? "taken back" : "not known";
  }
}

function valueAt({ values }: WrittenTable, cell: string): unknown {
  const place = placeOfCell(cell);
  return place === null ? undefined : (values[place.row - 1]?.[place.column - 1] ?? "");
}
