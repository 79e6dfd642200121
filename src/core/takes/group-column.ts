import type { Batch } from "../records/batch";

/** A column that batches are grouped by. */
export interface GroupColumn {
  readonly name: string;
  /** The batch's text in it; empty when blank. */
  valueOf(batch: Batch): string;
}
