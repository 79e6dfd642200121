import {
  add,
  at,
  entry,
  type Matrix,
  normalQuantile,
  rootOf,
  solvedBackward,
  solvedForward,
} from "../mathematics";
import { byMonth, type SeenOnDay, varianceLeft } from "./seen-by-month";

/** How far two things may change: for each the standard deviation believed, and the weight of believing it. */
export interface BelievedChange {
  /** In a year. */
  readonly drift: readonly Weighed[];
  /** Of each of the two waves that make up a year's. */
  readonly season: readonly Weighed[];
}

interface Weighed {
  readonly sd: number;
  readonly weight: number;
}

/** What a day does beside the days on which it was seen, on the mean. */
export interface TimeEffect {
  /** Its mean, and how unsure it is beyond what is unsure of the level itself. */
  on(day: number): { readonly shift: number; readonly variance: number };
  /** One possible truth. @param uniform 0 to 1 */
  draw(uniform: () => number): (day: number) => number;
}

/** Records of fewer months tell nothing of how things change (our choice). */
const FEWEST_MONTHS = 9;
/** Times that the variance left over may be what it looks like. */
const NOISES = [0.5, 0.75, 1, 1.35, 1.8];
/** Combinations less likely than this are left out. */
const TOO_UNLIKELY = 1e-3;
/** No change at all, as a standard deviation that can be inverted. */
const NONE = 1e-4;
const FLAT = 1000;
const TERMS = 4;
/**
 * Years after which a drift has as good as ended, seen from the reference day: nothing goes on for ever
 * (our choice).
 */
const DRIFT_LASTS = 2;

/**
 * How a nursery changes from year to year and within the year.
 *
 * Whatever was seen is a level, a line through the years, and a wave through the year, and what
 * differs by itself. Most nurseries hardly change, so the line and the wave are believed to be flat unless
 * what was seen says otherwise; how far they may be is found out with them. After the reference day
 * the line bends to be level.
 *
 * @param reference the civil day from which drift is counted, mostly the as-of day
 * @returns null where too little was seen
 *
 * Method: Bayesian linear regression under each combination of what is believed, averaged by how well
 *   each explains what was seen (its marginal likelihood); what differs by itself is known up to a factor,
 *   averaged over too. The line's end is that of a damped trend.
 * Source: Harvey, A. C. (1989). Forecasting, Structural Time Series Models and the Kalman Filter, ch. 2
 *   (trend and trigonometric season); Gardner, E. S., McKenzie, E. (1985). Forecasting trends in time
 *   series. Management Science 31, 1237-1246 (damped trend); both from memory. What is believed is ours.
 */
export function timeEffect(
  seen: readonly SeenOnDay[],
  reference: number,
  believed: BelievedChange,
): TimeEffect | null {
  if (seen.length < FEWEST_MONTHS) return null;
  const left = varianceLeft(seen);
  const months = byMonth(seen, left);
  if (months.length < FEWEST_MONTHS) return null;
  const termsOf = termsAbout(months, { reference, left });
  const combined: Fit[] = [];
  for (const times of NOISES) {
    const sums = sumsOf(months, termsOf, left * times);
    for (const drift of believed.drift) {
      for (const season of believed.season) {
        combined.push(fitted(sums, { drift, season }));
      }
    }
  }
  const best = combined.reduce((most, { log }) => Math.max(most, log), Number.NEGATIVE_INFINITY);
  const weighed = combined
    .map((fit) => ({ ...fit, weight: Math.exp(fit.log - best) }))
    .filter(({ weight }) => weight > TOO_UNLIKELY);
  const total = weighed.reduce((sum, { weight }) => sum + weight, 0);
  const fits = weighed.map((fit) => ({ ...fit, weight: fit.weight / total }));
  const mean = (of: (fit: Fit) => number) =>
    fits.reduce((sum, fit) => sum + fit.weight * of(fit), 0);
  return {
    on: (day) => {
      const terms = termsOf(day);
      const shift = mean((fit) => shiftOf(fit.means, terms));
      const square = mean((fit) => {
        const own = shiftOf(fit.means, terms);
        return own * own + Math.max(0, varianceOf(fit.root, terms) - fit.ofLevel);
      });
      return { shift, variance: Math.max(0, square - shift * shift) };
    },
    draw: (uniform) => {
      let chance = uniform();
      const fit =
        fits.find(({ weight }) => {
          chance -= weight;
          return chance < 0;
        }) ?? (fits[fits.length - 1] as Fit);
      const drawn = drawnTerms(fit, uniform);
      return (day) => shiftOf(drawn, termsOf(day));
    },
  };
}

/** One combination of what is believed, fitted. */
interface Fit {
  readonly means: Float64Array;
  /** The precision's square root. */
  readonly root: Matrix;
  /** Variance of the level, which whoever asks has learned already. */
  readonly ofLevel: number;
  /** Logarithm of how well it explains what was seen, times what is believed of it. */
  readonly log: number;
  readonly weight: number;
}

/**
 * The terms of a day beside those of what was seen on the mean: so the level is the mean of what was seen,
 * and a day like those has no effect.
 */
function termsAbout(
  months: readonly SeenOnDay[],
  { reference, left }: { readonly reference: number; readonly left: number },
): (day: number) => Float64Array {
  const mean = new Float64Array(TERMS);
  let total = 0;
  for (const { day, chance, unit } of months) {
    const weight = 1 / (chance + left * unit);
    total += weight;
    plainTerms(day, reference).forEach((term, i) => {
      add(mean, i, weight * term);
    });
  }
  return (day) =>
    plainTerms(day, reference).map((term, i) => (i === 0 ? 1 : term - at(mean, i) / total));
}

/** Level, line, and the two waves of a year. */
function plainTerms(day: number, reference: number): Float64Array {
  const years = (day - reference) / 365.25;
  const line = years <= 0 ? years : DRIFT_LASTS * (1 - Math.exp(-years / DRIFT_LASTS));
  const angle = (2 * Math.PI * day) / 365.25;
  return Float64Array.of(1, line, Math.cos(angle), Math.sin(angle));
}

/** Without the level, which whoever asks has learned already. */
function shiftOf(means: Float64Array, terms: Float64Array): number {
  let sum = 0;
  for (let i = 1; i < TERMS; i += 1) sum += at(means, i) * at(terms, i);
  return sum;
}

interface Sums {
  readonly squares: Float64Array;
  readonly products: Float64Array;
  readonly ofValues: number;
  readonly logWeights: number;
  readonly weights: number;
}

function sumsOf(
  seen: readonly SeenOnDay[],
  termsOf: (day: number) => Float64Array,
  noise: number,
): Sums {
  const squares = new Float64Array(TERMS * TERMS);
  const products = new Float64Array(TERMS);
  let ofValues = 0;
  let logWeights = 0;
  let weights = 0;
  for (const { day, value, chance, unit } of seen) {
    const weight = 1 / (chance + noise * unit);
    const terms = termsOf(day);
    for (let i = 0; i < TERMS; i += 1) {
      add(products, i, weight * at(terms, i) * value);
      for (let j = 0; j <= i; j += 1) {
        add(squares, i * TERMS + j, weight * at(terms, i) * at(terms, j));
      }
    }
    ofValues += weight * value * value;
    logWeights += Math.log(weight);
    weights += weight;
  }
  return { squares, products, ofValues, logWeights, weights };
}

function fitted(
  { squares, products, ofValues, logWeights, weights }: Sums,
  { drift, season }: { readonly drift: Weighed; readonly season: Weighed },
): Fit {
  const precision = { size: TERMS, values: Float64Array.from(squares) };
  const believed = [FLAT, drift.sd || NONE, season.sd || NONE, season.sd || NONE];
  let logPrior = Math.log(drift.weight * season.weight);
  believed.forEach((sd, i) => {
    add(precision.values, i * TERMS + i, 1 / (sd * sd));
    logPrior -= Math.log(sd);
  });
  // What is believed alone makes it positive definite.
  const root = rootOf(precision) as Matrix;
  const half = solvedForward(root, products);
  const means = solvedBackward(root, half);
  let explained = 0;
  let logRoot = 0;
  for (let i = 0; i < TERMS; i += 1) {
    explained += at(half, i) ** 2;
    logRoot += Math.log(entry(root, i, i));
  }
  const log = logPrior + 0.5 * (logWeights - ofValues + explained) - logRoot;
  return { means, root, ofLevel: 1 / weights, log, weight: 0 };
}

function varianceOf(root: Matrix, terms: Float64Array): number {
  return solvedForward(root, terms).reduce((sum, value) => sum + value * value, 0);
}

function drawnTerms({ means, root }: Fit, uniform: () => number): Float64Array {
  const normal = () => normalQuantile(Math.max(1e-12, uniform()));
  const off = solvedBackward(root, Float64Array.from({ length: TERMS }, normal));
  return means.map((mean, i) => mean + at(off, i));
}
