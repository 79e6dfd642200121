import type { NurseryState } from "./records-on-day";

/** Both ends belong to it. */
export interface Range {
  readonly low: number;
  readonly high: number;
}

/** What is said of one open batch; null where nothing is said. */
export interface BatchRanges {
  /** Civil days between which it becomes ready. */
  readonly days: Range | null;
  /** Plants that become ready. */
  readonly plants: Range | null;
}

/** Says of every open batch of a table, by its name, when how many plants are ready. */
export type RangesOf = (state: NurseryState, level: number) => ReadonlyMap<string, BatchRanges>;
