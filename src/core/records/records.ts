import type { Batch } from "./batch";
import type { ColumnMatch } from "./match-columns";
import type { Trouble } from "./trouble";

/** A nursery's table, read: its batches, and everything in it that a person should look at. */
export interface Records {
  readonly batches: readonly Batch[];
  /** Keys of the steps that the table has columns for. */
  readonly stepKeys: readonly string[];
  readonly troubles: readonly Trouble[];
  readonly columns: readonly ColumnMatch[];
  readonly rows: RowTally;
  /** The text of any column in a batch's row, known to us or not. */
  textIn(batch: Batch, column: number): string;
}

/** Every row below the top of the range is one of these. */
export interface RowTally {
  /** Rows down to and with the header. */
  readonly heading: number;
  readonly used: number;
  readonly leftOut: number;
  readonly blank: number;
}

/** The closing sentence of a table function; null when every row was used. */
export function leftOutRemark(records: Records): string | null {
  const { leftOut } = records.rows;
  if (leftOut === 0) return null;
  return leftOut === 1
    ? "1 row left out: see BATCH_CHECK"
    : `${leftOut} rows left out: see BATCH_CHECK`;
}

/** The place of a step among the records' steps; null when the table has no column for it. */
export function stepPlace(records: Records, key: string): number | null {
  const place = records.stepKeys.indexOf(key);
  return place === -1 ? null : place;
}
