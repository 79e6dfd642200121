import { incompleteBeta } from "../mathematics";
import { betaBinomialChanceOfAtLeast, betaOfMoments, type ShareMoments } from "../statistics";

/** No order is planned from more plants than this. */
export const MOST_STARTED = 10_000_000;

/**
 * The smallest number of plants of which, with a given chance, at least so many are kept.
 *
 * @param wanted whole number, 0 or more
 * @param share  of the plants that is kept: a share that varies makes the number kept beta-binomial,
 *   one that does not makes it binomial
 * @param chance strictly between 0 and 1
 * @returns whole number, never less than `wanted` divided by the mean share; null when ten million
 *   plants are too few
 *
 * Method: the chance rises with every plant started, so doubling and halving find the first number.
 */
export function smallestStart(wanted: number, share: ShareMoments, chance: number): number | null {
  if (wanted <= 0) return 0;
  const plain = plainStart(wanted, share.mean);
  if (plain === null) return null;
  const enough = (plants: number) => chanceOfAtLeast(wanted, plants, share) >= chance - 1e-12;
  if (enough(plain)) return plain;
  let low = plain;
  let high = plain * 2;
  while (!enough(high)) {
    if (high >= MOST_STARTED) return null;
    low = high;
    high = Math.min(MOST_STARTED, high * 2);
  }
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (enough(middle)) high = middle;
    else low = middle;
  }
  return high;
}

/**
 * The plain division: wanted by the share kept, rounded up.
 *
 * @returns null when nothing is kept, or more than ten million would be needed
 *
 * @example plainStart(10, 0.8) // 13
 */
export function plainStart(wanted: number, share: number): number | null {
  if (!(share > 0)) return null;
  // 9 of 0.9 must be 10, whatever the product of shares rounds to.
  const plants = Math.max(wanted, Math.ceil(wanted / share - 1e-9));
  return plants <= MOST_STARTED ? plants : null;
}

/** The chance that at least so many of the plants are kept, 0 to 1. */
export function chanceOfAtLeast(wanted: number, plants: number, share: ShareMoments): number {
  const beta = betaOfMoments(share);
  if (beta === null) return binomialChanceOfAtLeast(wanted, plants, share.mean);
  return betaBinomialChanceOfAtLeast(wanted, plants, beta);
}

/**
 * The chance that at least so many of the plants are kept, each with one chance.
 *
 * Method: the binomial sum as a regularised incomplete beta function.
 * Source: Abramowitz, M., Stegun, I. A. (1964). Handbook of Mathematical Functions, 26.5.24.
 */
export function binomialChanceOfAtLeast(wanted: number, plants: number, share: number): number {
  if (wanted <= 0) return 1;
  if (wanted > plants || share <= 0) return 0;
  if (share >= 1) return 1;
  return incompleteBeta(share, wanted, plants - wanted + 1);
}
