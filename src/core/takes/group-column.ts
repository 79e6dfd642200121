import type { Batch } from "../records";

/** A column that batches are grouped by. */
export interface GroupColumn {
  readonly name: string;
  /** Whether it names people, who may want to be called by their initials. */
  readonly people: boolean;
  /** The batch's text in it; empty when blank. */
  valueOf(batch: Batch): string;
}
