import type { Reading } from "./reading";
/** Something that the messy sheet was read otherwise in than the clean one. */
export interface Difference {
  /** Row of the messy sheet, from 1. */
  readonly row: number;
  /** Which column, by roleKey; "row" for a batch that is missing or too many. */
  readonly what: string;
  readonly clean: string;
  readonly read: string;
  /** BATCH_CHECK's trouble that says so; null where nothing says so. */
  readonly listedAs: string | null;
}
export type Outcome = "identical" | "listed" | "silent";
export declare function outcomeOf(differences: readonly Difference[]): Outcome;
/**
 * Holds the reading of a messy sheet against that of the clean one, batch by batch. A batch without
 * a name in the sheet is rightly called by its row.
 */
export declare function differences(clean: Reading, messy: Reading): Difference[];
