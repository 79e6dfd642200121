import type { Records } from "./records";

/** Rows that hold something, of which nothing could be used. */
export interface LeftOut {
  readonly code: "rows-left-out";
  readonly rows: number;
}

/** A remark on the rows that were left out, if any were. */
export function leftOut({ rows }: Records): readonly LeftOut[] {
  return rows.leftOut === 0 ? [] : [{ code: "rows-left-out", rows: rows.leftOut }];
}
