import { lazily } from "../lazily";
import { madeOnce } from "../made-once";
import { type Batch, type LogEvent, likeName, type Records, targetKey } from "../records";

/** Where a cell stands, and its text. */
export interface CellFound {
  /** In the range, from 1. */
  readonly row: number;
  /** Header. */
  readonly column: string;
  readonly found: string;
}

export interface BatchCells {
  /** The column of a table that is read so: "step grafting count"; "cut" for the day scions were cut. */
  columnOf(table: number, wanted: string): number | null;
  /** In the batch's own row, else in its last line of a log that is read so; null where there is none. */
  cell(batch: Batch, wanted: string): CellFound | null;
}

/** Finds in which cells the records say something of a batch. */
export function batchCells(records: Records): BatchCells {
  const matchOf = (table: number, wanted: string) =>
    records.columns.find(
      ({ target, scionsCut, ...one }) =>
        one.table === table && wanted === (scionsCut ? "cut" : target && targetKey(target)),
    );
  const linesOf = lazily(() => {
    const lines = new Map<string, LogEvent[]>();
    for (const line of records.lines) madeOnce(lines, likeName(line.batch), () => []).push(line);
    return lines;
  });
  const inLog = (batch: Batch, wanted: string) => {
    const isDay = wanted.endsWith(" day");
    const line = (linesOf().get(likeName(batch.name)) ?? [])
      .filter(({ what }) =>
        what.kind === "step"
          ? wanted === `step ${what.key} ${isDay ? "day" : "count"}`
          : wanted === `fact ${what.kind}`,
      )
      .pop();
    const match = line && matchOf(line.table, isDay ? "event eventDay" : "event eventCount");
    return line && match && { row: line.row, match };
  };
  return {
    columnOf: (table, wanted) => matchOf(table, wanted)?.column ?? null,
    cell: (batch, wanted) => {
      const own = matchOf(batch.table, wanted);
      const at = own === undefined ? inLog(batch, wanted) : { row: batch.row, match: own };
      if (at === undefined) return null;
      const { row, match } = at;
      return { row, column: match.header, found: records.textIn({ ...batch, row }, match.column) };
    },
  };
}
