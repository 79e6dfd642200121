export interface CountedBatch {
  /** Above 0. */
  readonly grafted: number;
  /** 0 to grafted. */
  readonly taken: number;
}

export interface BatchSpread {
  /** Pearson's X² summed over the groups. */
  readonly chiSquare: number;
  /** Σ (batches − 1); 0 when no group has two batches. */
  readonly degreesOfFreedom: number;
  /** How many times more batches of a group differ than chance makes them; 1 or more. */
  readonly factor: number;
}

/**
 * How much more the batches of a group differ from one another than plants of one chance would.
 *
 * @param groups for each group its batches
 *
 * Method: heterogeneity factor, Pearson's X² of the batches about their group's pooled rate over
 *   its degrees of freedom, not below 1.
 * Source: McCullagh, P., Nelder, J. A. (1989). Generalized Linear Models, 2nd ed., section 4.5 (looked up);
 *   Finney, D. J. (1971). Probit Analysis, 3rd ed., section 4.6 (section number from memory).
 */
export function batchSpread(groups: readonly (readonly CountedBatch[])[]): BatchSpread {
  let chiSquare = 0;
  let degreesOfFreedom = 0;
  for (const batches of groups) {
    if (batches.length === 0) continue;
    const rate = pooledRate(batches);
    degreesOfFreedom += batches.length - 1;
    if (rate === 0 || rate === 1) continue;
    for (const { grafted, taken } of batches) {
      chiSquare += (taken - grafted * rate) ** 2 / (grafted * rate * (1 - rate));
    }
  }
  const factor = degreesOfFreedom === 0 ? 1 : Math.max(1, chiSquare / degreesOfFreedom);
  return { chiSquare, degreesOfFreedom, factor };
}

/** Takes over grafts of all batches together, never the mean of the batches' rates. */
export function pooledRate(batches: readonly CountedBatch[]): number {
  let grafted = 0;
  let taken = 0;
  for (const batch of batches) {
    grafted += batch.grafted;
    taken += batch.taken;
  }
  return taken / grafted;
}
