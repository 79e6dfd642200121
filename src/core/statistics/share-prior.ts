import { totalOf } from "../mathematics";
import type { ShareMoments } from "./beta-moments";

/**
 * What is believed of the share of plants that pass a step before anything is recorded. The
 * weights are ours; check:calibration shows what they are worth.
 */
export const SHARE_PRIOR = {
  /** How far a nursery's own mean may lie from the timetable's, as a correlation. */
  nursery: 0.03,
  /** How far varieties of one nursery differ: correlations with their weights. */
  varieties: { values: [0.001, 0.004, 0.012, 0.03, 0.07, 0.15], meanSpread: 0.02 },
  /** How far batches of one variety differ: correlation of the plants of a batch. */
  batches: {
    values: [0.002, 0.005, 0.01, 0.02, 0.035, 0.055, 0.08, 0.11, 0.15, 0.2, 0.27, 0.36, 0.5],
    meanSpread: 0.055,
  },
} as const;

export interface SpreadPrior {
  readonly values: readonly number[];
  readonly meanSpread: number;
}

/**
 * Weights of a prior's values: an exponential density with the stated mean, each value standing
 * for the stretch half-way to its neighbours. They add up to 1.
 */
export function spreadWeights({ values, meanSpread }: SpreadPrior): readonly number[] {
  const edge = (index: number): number => {
    if (index === 0) return 0;
    if (index === values.length) return 1;
    return ((values[index - 1] as number) + (values[index] as number)) / 2;
  };
  const below = (value: number) => 1 - Math.exp(-value / meanSpread);
  const weights = values.map((_, index) => below(edge(index + 1)) - below(edge(index)));
  const total = totalOf(weights);
  return weights.map((weight) => weight / total);
}

/** Mean of a prior's values under its weights. */
export function meanSpread(prior: SpreadPrior): number {
  const weights = spreadWeights(prior);
  return prior.values.reduce((sum, value, index) => sum + value * (weights[index] as number), 0);
}

/** How far a batch of an unrecorded nursery may lie from the timetable, as a correlation. */
export const SPREAD_OF_A_NEW_BATCH =
  1 -
  (1 - SHARE_PRIOR.nursery) *
    (1 - meanSpread(SHARE_PRIOR.varieties)) *
    (1 - meanSpread(SHARE_PRIOR.batches));

/**
 * Moments of the share that a batch of an unrecorded nursery keeps.
 *
 * @param mean the timetable's share, 0 to 1
 *
 * Method: nested betas; each level leaves the share 1 − correlation of m(1 − m) to the next.
 * Source: ours, by the law of total variance; the tests hold it against nurseries drawn one by one.
 */
export function newBatchShare(mean: number): ShareMoments {
  return {
    mean,
    meanSquare: mean * mean + mean * (1 - mean) * SPREAD_OF_A_NEW_BATCH,
  };
}
