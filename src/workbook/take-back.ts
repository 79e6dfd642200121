import type { FoundAgain } from "./find-again";
import { withLock } from "./lock";
import { plainText, recordsNow } from "./records-tab";
import { settleLog } from "./settle-log";
import type { Question, TakeBackAnswer } from "./sidebar-calls";
import { allOrNone, NotPutBack, sameValue } from "./write-cells";
import { type LogEntry, type LogState, logEntries, markLog } from "./write-log";
import { type WrittenTable, writtenTable } from "./written-table";

/**
 * Takes a write back: every cell gets what stood there before, wherever it stands by now. Nothing is
 * taken back when a cell holds something else than what was written, since that is somebody's too.
 */
export function takeBack(logId: string): TakeBackAnswer {
  return withLock(() => {
    const records = settleLog(recordsNow());
    const lines = logEntries(records.workbook).filter(
      ({ id, state }) => id === logId && (state === "written" || state === "kept here"),
    );
    const entries = lines.filter(({ state }) => state === "written");
    const [first] = entries;
    if (first === undefined) {
      throw new Error("That write is not in the log, or was taken back already");
    }
    const now = writtenTable(records, first);
    const found = now.again(entries);
    const asked = changedSince(now, found);
    if (asked.length > 0) return { restored: [], asked };
    restore(now, found, lines);
    return {
      restored: found.cells.map(({ cell, entry }) => ({
        where: `${entry.tab}!${cell}`,
        header: entry.header,
        value: entry.before === "" ? null : plainText(now.door, entry.before),
      })),
      asked: [],
    };
  });
}

/** Cells that no longer hold what was written, each in a sentence with both values. */
function changedSince({ door, sheet }: WrittenTable, { cells, beside }: FoundAgain): Question[] {
  const filled = beside.map(({ header, cell, holds }): Question => {
    const stands = plainText(door, holds);
    return {
      question: `${header} (${cell}) holds ${stands} by now, which was blank: the row is left as it is`,
      stands,
      would: null,
    };
  });
  const changed = cells.flatMap(({ entry, cell, row, column, holds }): Question[] => {
    const formula = sheet.getRange(row, column).getFormula();
    if (formula === "" && sameValue(holds, entry.after)) return [];
    const stands = formula === "" ? plainText(door, holds) : formula;
    const shown = stands === "" ? "is blank" : `holds ${stands}`;
    return [
      {
        question: `${entry.header} (${cell}) ${shown} by now, where ${plainText(door, entry.after)} was written: it is left as it is, and so is the rest`,
        stands,
        would: plainText(door, entry.before),
      },
    ];
  });
  return [...changed, ...filled];
}

function restore(
  now: WrittenTable,
  { cells, landmarks }: FoundAgain,
  lines: readonly LogEntry[],
): void {
  const mark = (state: LogState) =>
    markLog(
      now.workbook,
      lines.map(({ row }) => ({ row, state })),
    );
  const markAsBefore = () => markLog(now.workbook, lines);
  try {
    mark("taking back");
    allOrNone(now.sheet, cells, landmarks, () => mark("taken back"));
  } catch (error) {
    if (error instanceof NotPutBack) mark("taking back");
    else markAsBefore();
    throw error;
  }
}
