/** One row of a timetable, its cells read but not yet held against each other. */
export interface StepRow {
  /** Row in the table it came from, for messages; from 1. */
  readonly row: number;
  readonly method: string;
  readonly step: string;
  readonly after: string;
  readonly from: number | null;
  readonly usual: number | null;
  readonly by: number | null;
  readonly counted: boolean;
  readonly keptOf100: number | null;
  readonly perPersonHour: number | null;
  readonly needs: string;
  readonly caution: string;
  readonly source: string;
  /** As it is written; empty where the usual one is meant. */
  readonly kind: string;
  /** Whole days from one time to the next, of care that is repeated; null of all else. */
  readonly every: number | null;
  /** The step that ends such care; empty where its days or the batch end it. */
  readonly until: string;
}

/** Ten years: more is a slip, and would make forecasts of millions of days. */
export const MOST_DAYS = 3660;

/** A window with what was left out filled in: one side from the usual day, the usual day between the two. */
export function windowOf(row: StepRow): Pick<StepRow, "from" | "usual" | "by"> {
  if (row.every !== null) {
    // Care goes on, from the first day that is said to the last.
    const from = row.from ?? row.usual ?? 0;
    return { from, usual: row.usual ?? from, by: row.by ?? MOST_DAYS };
  }
  const usual =
    row.usual ??
    (row.from !== null && row.by !== null
      ? Math.round((row.from + row.by) / 2)
      : (row.from ?? row.by));
  return { from: row.from ?? usual, usual, by: row.by ?? usual };
}
