/** One batch at one step: kept of so many. */
export interface KeptCount {
  /** 0 to of. */
  readonly kept: number;
  /** 1 or more. */
  readonly of: number;
}

/**
 * All that a beta-binomial likelihood needs of any number of batches: sums over k of how many
 * batches have more than k kept, more than k lost, more than k in all. Its size grows with the
 * largest batch, not with the number of batches.
 */
export interface ShareCounts {
  readonly batches: number;
  readonly kept: Blocks;
  readonly lost: Blocks;
  readonly all: Blocks;
}

/** Stretches of k: for each its weight Σ batches, its weighted mean k, and half the variance of k in it. */
interface Blocks {
  readonly weights: Float64Array;
  readonly means: Float64Array;
  readonly halfVariances: Float64Array;
}

/** Single values up to here, then stretches a tenth longer each: log(a + k) is nearly straight there. */
const SINGLE_UP_TO = 12;
const GROWTH = 1.1;

export function shareCounts(batches: readonly KeptCount[]): ShareCounts {
  return {
    batches: batches.length,
    kept: blocks(batches.map(({ kept }) => kept)),
    lost: blocks(batches.map(({ kept, of }) => of - kept)),
    all: blocks(batches.map(({ of }) => of)),
  };
}

/**
 * Logarithm of the beta-binomial likelihood, up to a constant of the data.
 *
 * @param means       each strictly between 0 and 1
 * @param correlation of the plants within a batch, strictly between 0 and 1
 *
 * Method: log Γ(a + x)/Γ(a) = Σ over k < x of log(a + k), gathered over batches; stretches of k
 *   by their mean and variance (second-order), exact to about 1e-6 of the sum.
 * Source: Griffiths, D. A. (1973). Biometrics 29, 637-648; Crowder, M. J. (1978). Appl. Statist.
 *   27, 34-37 (parameters mean and correlation).
 */
export function logLikelihoods(
  counts: ShareCounts,
  means: Float64Array,
  correlation: number,
): Float64Array {
  const total = (1 - correlation) / correlation;
  const ofAll = sumOfLogs(counts.all, total);
  return means.map(
    (mean) =>
      sumOfLogs(counts.kept, mean * total) + sumOfLogs(counts.lost, (1 - mean) * total) - ofAll,
  );
}

function sumOfLogs({ weights, means, halfVariances }: Blocks, start: number): number {
  let sum = 0;
  for (let i = 0; i < weights.length; i += 1) {
    const at = start + (means[i] as number);
    sum += (weights[i] as number) * (Math.log(at) - (halfVariances[i] as number) / (at * at));
  }
  return sum;
}

/** Σ over values v, over k < v, gathered by k. */
function blocks(values: readonly number[]): Blocks {
  const largest = values.reduce((most, value) => Math.max(most, value), 0);
  const endingAt = new Float64Array(largest + 1);
  for (const value of values) endingAt[value] = (endingAt[value] as number) + 1;
  const weights: number[] = [];
  const means: number[] = [];
  const halfVariances: number[] = [];
  let more = values.length - (endingAt[0] as number);
  let k = 0;
  while (k < largest) {
    const end = k < SINGLE_UP_TO ? k + 1 : Math.min(largest, Math.ceil(k * GROWTH) + 1);
    let weight = 0;
    let first = 0;
    let second = 0;
    for (; k < end; k += 1) {
      weight += more;
      first += more * k;
      second += more * k * k;
      more -= endingAt[k + 1] as number;
    }
    const mean = first / weight;
    weights.push(weight);
    means.push(mean);
    halfVariances.push(Math.max(0, second / weight - mean * mean) / 2);
  }
  return {
    weights: Float64Array.from(weights),
    means: Float64Array.from(means),
    halfVariances: Float64Array.from(halfVariances),
  };
}
