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

/** Columns that were given names which are none of ours and no steps of the timetable. */
interface ColumnsUnknown {
  readonly code: "no-such-columns";
  readonly columns: readonly {
    /** As it stands in the sheet. */
    readonly header: string;
    /** What it was called. */
    readonly name: string;
  }[];
}

/** What no answer may leave out without a word; part of the remarks of each. */
export type LeftOut = RowsLeftOut | ColumnsUnknown | MethodsUnread;

/** Remarks on the rows and the columns that were left out. */
export function leftOut({ rows, troubles }: Records): readonly LeftOut[] {
  const columns = troubles
    .filter(({ code }) => code === "no-such-column")
    .map(({ column, found }) => ({ header: column, name: found }));
  return [
    ...(rows.leftOut === 0 ? [] : [{ code: "rows-left-out", rows: rows.leftOut } as const]),
    ...(columns.length === 0 ? [] : [{ code: "no-such-columns", columns } as const]),
  ];
}
