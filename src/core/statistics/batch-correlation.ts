import { madeOnce } from "../made-once";
import { beyondT, reachOfT } from "./t-and-f-tails";

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
  /** What the squares of the batches alone say of it, 0 to 1. */
  readonly own: number;
  /** Correlation between plants of one batch, 0 to 1: how much more batches differ than chance. */
  readonly correlation: number;
  /** How uncertain that is. */
  readonly variance: number;
}

/**
 * What is believed of a nursery's batches before its own are seen (our choice; check:takes shows what
 * comes of it): with this chance that they vary by chance alone; else anything, a small spread rather
 * than a large one, as a half-Cauchy of this scale.
 */
const BELIEVED = { nothing: 0.4, half: 1 } as const;
/** A fit weighs batches by the correlation, which follows from the fit: from the usual one it settles so soon. */
export const USUAL_CORRELATION = 0.03;
export const ROUNDS = 2;
/** Points that a belief is laid out on, and how often they are drawn closer about where it lies. */
const POINTS = 32;
const CLOSER = 4;
/** Points of which the logarithm lies so far below the heaviest's are out of the question. */
const NEGLIGIBLE = -14;

/**
 * How much more the batches of a nursery differ than chance and the fit explain: the one model of it
 * behind all answers on takes (README.md here).
 *
 * A batch's takes vary 1 + (grafted − 1) × correlation times as much as chance makes them, so that
 * large batches, in which the batch's own fate weighs more, are not taken for surer than they are.
 *
 * Method: own by Williams' equation of moments. The belief by restricted likelihood of the
 *   residuals, √correlation being half-Cauchy beforehand, laid out on points.
 * Source: Williams, D. A. (1982). Extra-binomial variation in logistic linear models. Appl. Statist.
 *   31, 144-148, model II (citation looked up); Gelman, A. (2006). Prior distributions for variance
 *   parameters in hierarchical models. Bayesian Analysis 1, 515-534 (half-Cauchy; citation looked up).
 */
export function batchCorrelation(batches: readonly FittedBatch[]): BatchCorrelation {
  const own = ownCorrelation(batches);
  const sizes = bySize(batches);
  let low = 0;
  let high = 1;
  let belief = beliefOn({ low, high }, sizes);
  for (let round = 1; round < CLOSER; round += 1) {
    const step = (high - low) / POINTS;
    if (belief.last - belief.first > POINTS / 2) break;
    [low, high] = [
      Math.max(low, low + (belief.first - 1) * step),
      Math.min(high, low + (belief.last + 2) * step),
    ];
    belief = beliefOn({ low, high }, sizes);
  }
  return { own, correlation: belief.mean, variance: belief.variance };
}

/** How many times more than chance a batch's takes vary. */
export function spreadOf(grafted: number, correlation: number): number {
  return 1 + (grafted - 1) * correlation;
}

/** A variance that rests on an uncertain correlation. */
export interface UncertainVariance {
  /** What it is where batches vary by chance alone. */
  readonly byChance: number;
  /** What it is at the correlation believed, above 0. */
  readonly variance: number;
}

/**
 * How far from 0 a deviate of such a variance stays with a given chance, in its own standard deviations.
 *
 * Method: the variance is as uncertain as the part of it that the correlation adds; matched by two moments
 *   to an inverse gamma, under which the deviate is Student's t.
 * Source: Gelman, A., Carlin, J. B., Stern, H. S., Rubin, D. B. (1995). Bayesian Data Analysis, ch. 3
 *   (t as a normal of inverse-gamma variance; citation from memory).
 */
export function reachUnder(
  level: number,
  of: UncertainVariance,
  correlation: BatchCorrelation,
): number {
  const { degreesOfFreedom, scale } = matchedT(of, correlation);
  return reachOfT(level, degreesOfFreedom) * scale;
}

/** The chance that such a deviate lies as far from 0 as this or farther, on either side. */
export function chanceBeyond(
  deviate: number,
  of: UncertainVariance,
  correlation: BatchCorrelation,
): number {
  const { degreesOfFreedom, scale } = matchedT(of, correlation);
  return beyondT(deviate / Math.sqrt(of.variance) / scale, degreesOfFreedom);
}

function matchedT(
  { byChance, variance }: UncertainVariance,
  { correlation, variance: uncertainty }: BatchCorrelation,
) {
  const part = (variance - byChance) / variance;
  const relative = correlation > 0 ? (part * part * uncertainty) / (correlation * correlation) : 0;
  const degreesOfFreedom = Math.min(MOST_FREE, 4 + 2 / relative);
  return { degreesOfFreedom, scale: Math.sqrt((degreesOfFreedom - 2) / degreesOfFreedom) };
}

/** Beyond so many degrees of freedom t is as good as normal. */
const MOST_FREE = 1e6;

function ownCorrelation(batches: readonly FittedBatch[]): number {
  let excess = 0;
  let pull = 0;
  for (const { taken, grafted, share, leverage } of batches) {
    const free = share * (1 - share) * (1 - leverage);
    excess += (taken - grafted * share) ** 2 / grafted - free;
    pull += free * (grafted - 1);
  }
  return pull <= 0 ? 0 : Math.min(1, Math.max(0, excess / pull));
}

/** Batches of one size: how many are free of the fit, and their squares over chance. */
interface OfSize {
  free: number;
  squares: number;
}

function bySize(batches: readonly FittedBatch[]): ReadonlyMap<number, OfSize> {
  const sizes = new Map<number, OfSize>();
  for (const { taken, grafted, share, leverage } of batches) {
    const size = madeOnce(sizes, grafted, () => ({ free: 0, squares: 0 }));
    size.free += 1 - leverage;
    size.squares += (taken - grafted * share) ** 2 / (grafted * share * (1 - share));
  }
  return sizes;
}

/** The belief that batches vary by chance alone, and on points even in √correlation from low to high. */
function beliefOn(
  { low, high }: { readonly low: number; readonly high: number },
  sizes: ReadonlyMap<number, OfSize>,
) {
  const step = (high - low) / POINTS;
  const density = (1 - BELIEVED.nothing) / (BELIEVED.half * Math.atan(1 / BELIEVED.half));
  const points = Array.from({ length: POINTS }, (_, index) => {
    const root = low + (index + 0.5) * step;
    const prior = (density * step) / (1 + (root / BELIEVED.half) ** 2);
    const correlation = root * root;
    return { correlation, log: Math.log(prior) + logLikelihood(correlation, sizes) };
  });
  const nothing = Math.log(BELIEVED.nothing) + logLikelihood(0, sizes);
  const most = points.reduce((most, { log }) => Math.max(most, log), Number.NEGATIVE_INFINITY);
  const largest = Math.max(most, nothing);
  let sum = Math.exp(nothing - largest);
  let mean = 0;
  let square = 0;
  for (const { correlation, log } of points) {
    const weight = Math.exp(log - largest);
    sum += weight;
    mean += weight * correlation;
    square += weight * correlation * correlation;
  }
  mean /= sum;
  const counts = points.map(({ log }) => log - most > NEGLIGIBLE);
  return {
    mean,
    variance: Math.max(0, square / sum - mean * mean),
    first: counts.indexOf(true),
    last: counts.lastIndexOf(true),
  };
}

function logLikelihood(correlation: number, sizes: ReadonlyMap<number, OfSize>): number {
  let log = 0;
  for (const [grafted, { free, squares }] of sizes) {
    const spread = spreadOf(grafted, correlation);
    log -= (free * Math.log(spread) + squares / spread) / 2;
  }
  return log;
}
