import type { Records } from "./records";

/** Rows that hold something, of which nothing could be used. */
interface RowsLeftOut {
  readonly code: "rows-left-out";
  readonly rows: number;
}

/** Batches whose method the timetable lacks, or which may be of several: named, each once. */
export interface MethodsUnread {
  readonly code: "no-such-method" | "several-methods";
  readonly batches: readonly string[];
}

/** What no answer may leave out without a word; part of the remarks of each. */
export type LeftOut = RowsLeftOut | MethodsUnread;

/** A remark on the rows that were left out, if any were. */
export function leftOut({ rows }: Records): readonly LeftOut[] {
  return rows.leftOut === 0 ? [] : [{ code: "rows-left-out", rows: rows.leftOut }];
}
