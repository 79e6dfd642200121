import type { TimetableFault } from "../faults";
import type { Batch } from "./batch";
import type { ColumnMatch, TableKind } from "./column-match";
import type { LogEvent } from "./read-log";
import type { ToldWords } from "./told-words";
import type { Trouble } from "./trouble";

/** A nursery's table, read: its batches, and everything in it that a person should look at. */
export interface Records {
  readonly batches: readonly Batch[];
  /** Keys of the steps that the tables have columns or lines for. */
  readonly stepKeys: readonly string[];
  readonly troubles: readonly Trouble[];
  /** What was told of words in their cells, if anything was. */
  readonly words?: ToldWords | undefined;
  /** What could not be used of the timetable that they were read by. */
  readonly timetableFaults: readonly TimetableFault[];
  /** Columns of every table in the range. */
  readonly columns: readonly ColumnMatch[];
  /** The range's tables, in the order of the numbers by which columns and batches name theirs. */
  readonly tables: readonly RecordsTable[];
  /** Lines of the logs that could be used, in the order in which they stand. */
  readonly lines: readonly LogEvent[];
  readonly rows: RowTally;
  /** The row of the range's first header, from 1; of a header of two rows the upper. */
  readonly firstHeader: number;
  /** The text in a batch's row under a column of the range, known to us or not. */
  textIn(batch: Batch, column: number): string;
}

export interface RecordsTable {
  readonly kind: TableKind;
  /** Row of its header, from 1; of a header of two rows the upper. */
  readonly headerRow: number;
  readonly headerHeight: 1 | 2;
}

/** Every row of the range is one of these. */
export interface RowTally {
  /** Headers, and what stands above the first. */
  readonly heading: number;
  readonly used: number;
  /** Rows that hold something, of which nothing could be used. */
  readonly leftOut: number;
  /** Sums, headings of sections, notes. */
  readonly notBatches: number;
  readonly blank: number;
}

/** The index of a step among the records' steps; null when the tables have none for it. */
export function stepIndex(records: Records, key: string): number | null {
  const index = records.stepKeys.indexOf(key);
  return index === -1 ? null : index;
}
