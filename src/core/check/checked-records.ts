import type { CivilDay } from "../dates";
import { byCost, type Records, type RowTally, type Trouble } from "../records";
import type { BuiltTimetable } from "../timetable";
import { batchTroubles } from "./batch-troubles";
import { byCause, type TroubleEntry } from "./by-cause";
import { nearNames } from "./near-names";

/** The columns of a list of troubles. */
export const CHECK_COLUMNS = {
  row: "count",
  column: "text",
  found: "text",
  trouble: "text",
  whatHappens: "text",
  whatToDo: "text",
  rows: "text",
} as const;

export interface CheckedRecords {
  /** Each for itself, costliest first. */
  readonly troubles: readonly Trouble[];
  /** The same, equal ones together. */
  readonly entries: readonly TroubleEntry[];
  readonly rows: RowTally;
}

/**
 * Everything in the records that a person should look at, and what became of every row. Rows count
 * from 1 at the top of the range.
 *
 * @param asOf null when the question has no day; then no day lies ahead
 */
export function checkedRecords(
  records: Records,
  { timetable, faults }: BuiltTimetable,
  asOf: CivilDay | null,
): CheckedRecords {
  const ofTimetable = faults.map(
    (fault): Trouble => ({ row: null, column: "", found: fault.found, code: "timetable", fault }),
  );
  const troubles: Trouble[] = [
    ...ofTimetable,
    ...records.troubles,
    ...batchTroubles(records, timetable, asOf),
    ...nearNames(records),
  ];
  troubles.sort(byCost);
  return { troubles, entries: byCause(troubles, records), rows: records.rows };
}
