/** The first two moments of a share: E[X] and E[X²]. Products of independent shares multiply both. */
export interface ShareMoments {
  readonly mean: number;
  readonly meanSquare: number;
}

/** A beta distribution of a share. */
export interface Beta {
  readonly a: number;
  readonly b: number;
}

/** The share that is certain: everything passes. */
export const WHOLE: ShareMoments = { mean: 1, meanSquare: 1 };

/** Moments of the product of two independent shares, exactly. */
export function product(one: ShareMoments, other: ShareMoments): ShareMoments {
  return { mean: one.mean * other.mean, meanSquare: one.meanSquare * other.meanSquare };
}

/**
 * The beta distribution with given moments.
 *
 * @returns null when the share does not vary (nothing to spread), or is 0 or 1
 *
 * Method: matching of moments; a + b = m(1 − m)/v − 1.
 * Source: Johnson, N. L., Kotz, S., Balakrishnan, N. (1995). Continuous Univariate Distributions,
 *   vol. 2, 2nd ed., ch. 25 (citation looked up); checked against R (tests/fixtures/beta-quantiles).
 */
export function betaOfMoments({ mean, meanSquare }: ShareMoments): Beta | null {
  const variance = meanSquare - mean * mean;
  if (!(mean > 0 && mean < 1) || variance <= 1e-12) return null;
  const sum = (mean * (1 - mean)) / variance - 1;
  return sum > 0 ? { a: mean * sum, b: (1 - mean) * sum } : null;
}
