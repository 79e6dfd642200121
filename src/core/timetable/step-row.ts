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
}

/** A window with what was left out filled in: one side from the usual day, the usual day between the two. */
export function windowOf(row: StepRow): Pick<StepRow, "from" | "usual" | "by"> {
  const usual =
    row.usual ??
    (row.from !== null && row.by !== null
      ? Math.round((row.from + row.by) / 2)
      : (row.from ?? row.by));
  return { from: row.from ?? usual, usual, by: row.by ?? usual };
}
