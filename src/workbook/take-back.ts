import { withLock } from "./lock";
import type { TakeBackAnswer } from "./sidebar-calls";
import { sameValue, written } from "./write-cells";
import { logEntries, markLog } from "./write-log";

/**
 * Takes a write back: every cell gets what stood there before. Nothing is taken back when a cell has
 * been changed since, since that change is somebody's too.
 */
export function takeBack(logId: string): TakeBackAnswer {
  return withLock(() => {
    const workbook = SpreadsheetApp.getActiveSpreadsheet();
    const entries = logEntries(workbook, logId).filter(({ state }) => state === "written");
    const first = entries[0];
    if (first === undefined)
      throw new Error("That write is not in the log, or was taken back already");
    const cells = entries.map((entry) => {
      const sheet = workbook.getSheetByName(entry.tab);
      if (sheet === null) throw new Error(`There is no tab "${entry.tab}" any more`);
      return { entry, cell: sheet.getRange(entry.cell) };
    });
    const asked = cells
      .filter(({ entry, cell }) => !sameValue(cell.getValue(), entry.after))
      .map(({ entry, cell }) => ({
        question: `${entry.header} (${entry.cell}) was changed since: it is left as it is, and so is the rest`,
        stands: String(cell.getValue()),
        would: String(entry.before),
      }));
    if (asked.length > 0) return { restored: [], asked };
    const done: typeof cells = [];
    try {
      for (const one of cells) {
        if (!sameValue(one.cell.getValue(), one.entry.after)) {
          throw new Error(`${one.entry.cell} was changed by somebody else just now: look again`);
        }
        done.push(one);
        one.cell.setValue(written(one.entry.before));
      }
      markLog(workbook, { first: first.row, count: entries.length }, "taken back");
    } catch (error) {
      for (const { entry, cell } of done) cell.setValue(written(entry.after));
      throw error;
    }
    return {
      restored: entries.map(({ cell, header, before }) => ({
        where: `${entries[0]?.tab}!${cell}`,
        header,
        value: String(before),
      })),
      asked: [],
    };
  });
}
