/** How well a nursery writes down what happens. Shares are 0 to 1. */
export interface RecordHabits {
  /** Steps that the table has columns for, by place in STEPS. */
  readonly kept: readonly boolean[];
  /** Share of in-between records that are never written. */
  readonly missing: number;
  /** Mean days until a record is typed in, for the prompt ones. */
  readonly usualDelay: number;
  /** Share of records that lie about for days or weeks first. */
  readonly late: number;
  /** Share of finished batches that are closed in the table. */
  readonly closes: number;
  /** Share of batches that are closed without a record of being ready. */
  readonly silent: number;
  /** Share of batches whose row is forgotten: no ready, never closed. */
  readonly forgotten: number;
  readonly writesCulled: boolean;
  readonly writesMethod: boolean;
}
/** Draws a nursery's habits; the figures are our choice. */
export declare function recordHabits(seed: number): RecordHabits;
