import type { RecordsNow } from "../reading/records-tab";
import { findAgain } from "../tables/person-table";
import { recordsTable } from "../tables/records-table";
import type { OwnWrites } from "../tasks/record-wish";
import { sameValue } from "../writing/table-write";
import type { LogEntry } from "../writing/write-log";
import type { DueRow } from "./due-rows";

/** What a row of the due tab has written and nobody has changed since. */
export function ownWrites(
  now: RecordsNow,
  entries: readonly LogEntry[],
  row: Pick<DueRow, "task" | "batch" | "memory">,
): OwnWrites {
  const lines = ownLines(entries, row);
  const cells = row.memory.writes.flatMap((id) => {
    const written = lines.filter((line) => line.id === id && line.state === "written");
    try {
      return findAgain(recordsTable(now), written).cells.filter(({ holds, entry }) =>
        sameValue(holds, entry.after),
      );
    } catch {
      // What can't be found again is nobody's to correct.
      return [];
    }
  });
  return {
    wroteCell: (cell) =>
      cells.some(({ row: at, column }) => at === cell.row && column === cell.column),
    keeps: ({ header, after }) =>
      lines.some(
        (line) =>
          line.state === "kept here" && line.header === header && sameValue(line.after, after),
      ),
  };
}

/** The lines of a row's writes that are of its own batch and task: the row may have been typed over. */
export function ownLines(
  entries: readonly LogEntry[],
  { task, batch, memory }: Pick<DueRow, "task" | "batch" | "memory">,
): readonly LogEntry[] {
  return entries.filter(
    (line) => memory.writes.includes(line.id) && line.batch === batch && line.task === task,
  );
}
