/** How a batch lies beside what was fitted to it. */
export interface FittedBatch {
  readonly taken: number;
  /** Above 0. */
  readonly grafted: number;
  /** The share fitted to it, strictly between 0 and 1. */
  readonly share: number;
  /** How much of the batch's own plants went into the fit, 0 to 1. */
  readonly leverage: number;
}

export interface BatchCorrelation {
  /** What the batches alone say of it, 0 to 1. */
  readonly own: number;
  /** Correlation between plants of one batch, 0 to 1: how much more batches differ than chance. */
  readonly correlation: number;
  /** On how many free batches that rests, with what is believed beforehand. */
  readonly degreesOfFreedom: number;
}

/** What is believed of a nursery's batches before its own are seen (our choice, as in share-prior). */
export const BELIEVED = { correlation: 0.05, worth: 4 } as const;

/**
 * How much more the batches of a nursery differ than chance and the fit explain.
 *
 * A batch's takes then vary 1 + (grafted − 1) × correlation times as much as chance makes them, so
 * that large batches, in which the batch's own fate weighs more, are not taken for surer than they
 * are. A few batches tell little of how much batches differ: what is believed beforehand counts as
 * some batches more, which matters for nurseries with few and is lost among many.
 *
 * Method: squares of the batches about the fit, over their grafts, set equal to what is expected of
 *   them; strata weigh by their own chance, since a bad batch among few would hide behind the rate
 *   that it pulls down. Degrees of freedom by matching two moments of a weighted sum of squares.
 * Source: Williams, D. A. (1982). Extra-binomial variation in logistic linear models. Appl. Statist.
 *   31, 144-148, model II; Satterthwaite, F. E. (1946). Biometrics Bull. 2, 110-114 (citations
 *   looked up).
 */
export function batchCorrelation(batches: readonly FittedBatch[]): BatchCorrelation {
  let excess = 0;
  let pull = 0;
  for (const { taken, grafted, share, leverage } of batches) {
    const free = share * (1 - share) * (1 - leverage);
    excess += (taken - grafted * share) ** 2 / grafted - free;
    pull += free * (grafted - 1);
  }
  const own = pull <= 0 ? 0 : Math.min(1, Math.max(0, excess / pull));
  const free = freeBatches(batches, own);
  const correlation =
    (free * own + BELIEVED.worth * BELIEVED.correlation) / (free + BELIEVED.worth);
  return { own, correlation, degreesOfFreedom: free + BELIEVED.worth };
}

/** How many times more than chance a batch's takes vary. */
export function spreadOf(grafted: number, correlation: number): number {
  return 1 + (grafted - 1) * correlation;
}

function freeBatches(batches: readonly FittedBatch[], correlation: number): number {
  let sum = 0;
  let squares = 0;
  for (const { grafted, share, leverage } of batches) {
    const spread = share * (1 - share) * spreadOf(grafted, correlation);
    sum += (1 - leverage) * spread;
    squares += (1 - leverage) * spread * spread;
  }
  return squares === 0 ? 0 : (sum * sum) / squares;
}
