import {
  type BatchCorrelation,
  batchCorrelation,
  type FittedBatch,
  ROUNDS,
  reachUnder,
  spreadOf,
  USUAL_CORRELATION,
} from "./batch-correlation";
import { betaOfMoments } from "./beta-moments";
import { betaQuantile } from "./beta-quantile";
import { type ShareInterval, scoreInterval } from "./wilson-interval";

export interface CountedBatch {
  /** Above 0. */
  readonly grafted: number;
  /** 0 to grafted. */
  readonly taken: number;
}

/** What a group's batches together say of the share that such batches take. */
export interface PooledShare {
  /** Takes over grafts of all batches together, never the mean of the batches' rates. */
  readonly share: number;
  readonly range: ShareInterval;
  /** Grafts of the batch in the middle by size. */
  readonly usualSize: number;
  /** How many times more than chance batches of that size vary; 1 or more. */
  readonly spread: number;
  /** Between what shares batches of that size mostly take; null where none or all took. */
  readonly usualBatch: ShareInterval | null;
}

export interface PooledShares {
  /** In the order of the groups; null of a group without batches. */
  readonly groups: readonly (PooledShare | null)[];
  /** The same of the batch in the middle of all. */
  readonly spread: number;
  /** Whether any group has two batches, so that they say how much batches differ. */
  readonly isSpreadKnown: boolean;
}

/**
 * Each group's share with a range for what such batches take on average.
 *
 * @param level how many of 100 ranges should hold, strictly between 0 and 1
 *
 * Method: pooled share; variance of its sum under the correlation of all groups' batches
 *   (batch-correlation.ts); score interval with the reach of that variance's uncertainty.
 * Source: Williams, D. A. (1982). Appl. Statist. 31, 144-148 (variance and weights; citation looked up); the
 *   whole in README.md here. npm run check:takes shows how often it holds.
 */
export function pooledShares(
  groups: readonly (readonly CountedBatch[])[],
  level: number,
): PooledShares {
  const correlation = correlationWithin(groups);
  return {
    groups: groups.map((batches) => (batches.length === 0 ? null : pooled(batches))),
    spread: spreadOf(Math.max(1, middleSize(groups.flat())), correlation.correlation),
    isSpreadKnown: groups.some((batches) => batches.length > 1),
  };

  function pooled(batches: readonly CountedBatch[]): PooledShare {
    const { grafted, taken } = together(batches);
    const share = taken / grafted;
    let widened = 0;
    for (const one of batches)
      widened += one.grafted * spreadOf(one.grafted, correlation.correlation);
    const reach = reachUnder(level, { byChance: grafted, variance: widened }, correlation);
    const usualSize = middleSize(batches);
    const spread = spreadOf(usualSize, correlation.correlation);
    const variance = (share * (1 - share) * spread) / usualSize;
    const beta = betaOfMoments({ mean: share, meanSquare: share * share + variance });
    return {
      share,
      range: scoreInterval({ share, trials: (grafted * grafted) / widened, reach }),
      usualSize,
      spread,
      usualBatch:
        beta === null
          ? null
          : {
              low: betaQuantile(beta, (1 - level) / 2),
              high: betaQuantile(beta, (1 + level) / 2),
            },
    };
  }
}

/** How much the batches of a group differ, groups in which none or all took left out. */
export function correlationWithin(groups: readonly (readonly CountedBatch[])[]): BatchCorrelation {
  const telling = groups.filter((batches) => {
    const { grafted, taken } = together(batches);
    return taken > 0 && taken < grafted;
  });
  let found = batchCorrelation(fitted(telling, USUAL_CORRELATION));
  for (let round = 1; round < ROUNDS; round += 1) {
    found = batchCorrelation(fitted(telling, found.correlation));
  }
  return found;
}

/** Each batch beside its group's share, in which batches weigh by what they say under a correlation. */
function fitted(
  groups: readonly (readonly CountedBatch[])[],
  correlation: number,
): readonly FittedBatch[] {
  return groups.flatMap((batches) => {
    let all = 0;
    let taken = 0;
    for (const one of batches) {
      const weight = 1 / spreadOf(one.grafted, correlation);
      all += weight * one.grafted;
      taken += weight * one.taken;
    }
    return batches.map(
      (one): FittedBatch => ({
        taken: one.taken,
        grafted: one.grafted,
        share: taken / all,
        leverage: one.grafted / spreadOf(one.grafted, correlation) / all,
      }),
    );
  });
}

function together(batches: readonly CountedBatch[]): CountedBatch {
  let grafted = 0;
  let taken = 0;
  for (const batch of batches) {
    grafted += batch.grafted;
    taken += batch.taken;
  }
  return { grafted, taken };
}

/** The smaller of the two where there is no middle one; 0 of none. */
function middleSize(batches: readonly CountedBatch[]): number {
  const sizes = Float64Array.from(batches, ({ grafted }) => grafted).sort();
  return sizes[Math.ceil(sizes.length / 2) - 1] ?? 0;
}
