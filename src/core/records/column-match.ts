import type { ColumnTarget } from "./column-target";
import type { ColumnValues } from "./column-values";

/** How one column of a records table was understood. */
export interface ColumnMatch {
  /** Which of the range's tables it belongs to, from 0. */
  readonly table: number;
  /** From 0. */
  readonly column: number;
  /** As it stands in the sheet; of two rows both. */
  readonly header: string;
  /** null when the column is left alone. */
  readonly target: ColumnTarget | null;
  /** 1: chosen by what most of the cells hold; 2: by part of the header; 3: by the whole header; 4: told. */
  readonly sureness: 1 | 2 | 3 | 4;
  /** What else the column could be, the likeliest first; of one that is left alone what it may be. */
  readonly others: readonly ColumnTarget[];
  /** True where it says when scions were cut, by the day or by days before grafting: takes are compared by it. */
  readonly scionsCut?: true;
}

/** A column while its table is being understood. */
export interface ColumnSeen extends ColumnMatch {
  readonly values: () => ColumnValues;
  readonly begins: () => "day" | "count" | null;
  /** Of two for one thing the one that says sooner goes first: "Alive 1 mth" before "Alive 3 mth". */
  readonly afterDays: number;
  /** Whether the first of `others` is what its header says, to be read where its place agrees. */
  readonly isLikely: boolean;
  /** Whether it is known what it holds, and no column of ours is for that. */
  readonly isOther: boolean;
  /** Whether another answer uses it, or a trouble names it already. */
  readonly isSaid: boolean;
}

/** One row a batch, or one row an event. */
export type TableKind = "batches" | "log";
