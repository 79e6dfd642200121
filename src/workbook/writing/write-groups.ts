import { cellName } from "../host/cell-name";
import { NotPutBack } from "./changed-meanwhile";
import type { CellValues } from "./moved-lines";
import type { NoteHits } from "./put-back";
import type { CellWrite, TableMarks } from "./table-write";
import { allOrNone } from "./write-cells";
import type { CellContent, LoggedCell, LogLine, LogState, WriteLog } from "./write-log";

/** What one write puts into a table, and into the log. */
export interface LoggedGroup extends TableMarks {
  readonly id: string;
  /** Who did it, as it was typed. */
  readonly who: string;
  readonly writes: readonly (CellWrite & LoggedCell)[];
  /** What the table has no column for, for the log alone. */
  readonly kept: readonly LoggedCell[];
}

export interface WriteInto {
  readonly log: WriteLog;
  readonly sheet: GoogleAppsScript.Spreadsheet.Sheet;
  /** The tab's cells as they were read. */
  readonly values: CellValues;
  /** The minute, as text. */
  readonly when: string;
}

/**
 * Writes the cells of one or more writes into one tab, all of them or none, and puts them down in
 * the log.
 *
 * @throws ChangedMeanwhile when a cell no longer holds what it held
 * @throws NotPutBack when it failed and could not be undone; the log then says "writing"
 */
export function writeGroups(into: WriteInto, groups: readonly LoggedGroup[]): void {
  const { log, sheet, values, when } = into;
  const lines = groups.flatMap(({ id, who, writes, kept }) => [
    ...writes.map((cell) => ({ ...cell, id, who, when, write: cell })),
    ...kept.map((cell) => ({ ...cell, id, who, when, write: null })),
  ]);
  const rows = log.begin(lines);
  const rowOf = new Map<CellWrite | null, number>(
    lines.map(({ write }, at) => [write, rows[at] ?? 0]),
  );
  const markAll = (stateOf: (line: (typeof lines)[number]) => LogState) =>
    log.mark(lines.map((line, at) => ({ row: rows[at] ?? 0, state: stateOf(line) })));
  try {
    if (rowOf.size === 0 || lines.every(({ write }) => write === null)) {
      markAll(() => "kept here");
      return;
    }
    allOrNone(sheet, groups, {
      known: values,
      end: (landed) => {
        markAll(({ write }) => (write === null ? "kept here" : "written"));
        const cells = landed.flatMap(({ write, cell }) =>
          cell === write.cell ? [] : [{ row: rowOf.get(write) ?? 0, cell }],
        );
        if (cells.length > 0) log.setCells(cells);
      },
      noteHits: hitNotes(log, (write) => lines.find((line) => line.write === write)),
    });
  } catch (error) {
    markAll(() => (error instanceof NotPutBack ? "writing" : "not written"));
    throw error;
  }
}

/** Puts cells that were hit by mistake down in the log, as belonging to the same write. */
export function hitNotes(
  log: WriteLog,
  lineOf: (write: CellWrite) => LogLine | undefined,
): NoteHits {
  return (hits) => {
    const lines = hits.flatMap((hit): LogLine[] => {
      const line = lineOf(hit.write);
      if (line === undefined) return [];
      const before = (hit.was ?? "") as CellContent;
      const { header, name: batch, write } = hit;
      return [{ ...line, cell: cellName(hit), header, batch, before, after: write.after }];
    });
    const rows = log.begin(lines, "not known");
    return () => log.mark(rows.map((row) => ({ row, state: "taken back" })));
  };
}
