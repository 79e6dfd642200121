import { chanceOf } from "./chance";
import type { Change } from "./changes";
import { STEP, STEPS } from "./simulated-steps";

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
  /** Share of the counts that is missing besides. */
  readonly countsMissing: number;
  /** Whether of a batch that is lost no more is written than that its row is closed. */
  readonly hushesLosses: boolean;
}

/** Steps that a nursery may not have a column for: nothing is counted at them. */
const OPTIONAL = new Set<number>([
  STEP.firstRelease,
  STEP.budBreak,
  STEP.firstFlush,
  STEP.flushHardening,
  STEP.branching,
  STEP.unionClosed,
]);

/** Draws a nursery's habits; the figures are our choice. */
export function recordHabits(seed: number, change: Change | null = null): RecordHabits {
  const chance = chanceOf(seed, 3);
  const usual = {
    kept: STEPS.map((_, step) => !OPTIONAL.has(step) || chance.happens(0.75)),
    missing: chance.between(0.1, 0.2),
    usualDelay: chance.pick([0, 0.3, 1.5]),
    late: chance.between(0.02, 0.12),
    closes: chance.between(0.6, 1),
    silent: chance.between(0, 0.06),
    forgotten: chance.between(0, 0.03),
    writesCulled: chance.happens(0.4),
    writesMethod: chance.happens(0.7),
  };
  return {
    ...usual,
    countsMissing: change?.countsMissing ?? 0,
    hushesLosses: change?.deaths?.written === false,
    ...(change?.typedAfter !== undefined && { usualDelay: change.typedAfter }),
    // So that these nurseries break the one thing alone.
    ...(change !== null && { silent: 0, forgotten: 0, closes: 1 }),
  };
}
