import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import type { DayDistribution } from "./day-distribution";

/** Random draws from a generator with a seed: the same seed, the same draws. */
export interface Draws {
  /** 0 to 1, 1 left out. */
  uniform(): number;
  /** A share from the beta with a mean and a correlation (1/(a + b + 1)). */
  share(mean: number, correlation: number): number;
  /** How many of so many plants pass, each with one chance. */
  plants(of: number, chance: number): number;
  day(distribution: DayDistribution): number;
}

const MOST_DRAWS = 1000;
const FEWEST_DRAWS = 100;

/**
 * How often the whole is drawn: the more a draw holds, the fewer there are, so that the work stays the same.
 *
 * @param each what is drawn in one of them: batches, say
 * @param inAll how many of these are drawn in all, where the limits of their number allow it
 */
export function drawCount(each: number, inAll: number): number {
  return Math.round(Math.min(MOST_DRAWS, Math.max(FEWEST_DRAWS, inAll / Math.max(1, each))));
}

/** Above this variance a binomial count is drawn as a normal one, rounded. */
const NORMAL_FROM_VARIANCE = 20;

/**
 * Draws by a seed.
 *
 * @param seed whole number
 *
 * Method: the generator xoroshiro128+ of the package pure-rand; a beta as a ratio of gammas; a count
 *   by inversion, or as a rounded normal where it varies much; a day by inversion.
 * Source: Blackman, D., Vigna, S. (2021). Scrambled linear pseudorandom number generators. ACM Trans.
 *   Math. Software 47 (looked up); Devroye, L. (1986). Non-Uniform Random Variate Generation, ch. III.2
 *   (inversion) and IX.4 (beta) (chapters from memory). Of normals and gammas see below.
 */
export function seededDraws(seed: number): Draws {
  const generator = xoroshiro128plus(seed);
  const uniform = () => uniformFloat64(generator);
  return {
    uniform,
    share: (mean, correlation) => {
      if (mean <= 0 || mean >= 1 || correlation <= 0) return mean;
      const total = (1 - correlation) / correlation;
      const one = gamma(mean * total, uniform);
      const other = gamma((1 - mean) * total, uniform);
      // Both may round to 0 when the shares lie at the ends; then one end is as good as drawn.
      return one + other > 0 ? one / (one + other) : uniform() < mean ? 1 : 0;
    },
    plants: (of, chance) => {
      const variance = of * chance * (1 - chance);
      if (variance > NORMAL_FROM_VARIANCE) {
        const count = Math.round(of * chance + Math.sqrt(variance) * normal(uniform));
        return Math.min(of, Math.max(0, count));
      }
      return smallBinomial(of, chance, uniform());
    },
    day: ({ first, mass }) => {
      let left = uniform();
      for (let i = 0; i < mass.length; i += 1) {
        left -= mass[i] as number;
        if (left < 0) return first + i;
      }
      return first + mass.length - 1;
    },
  };
}

const TURN = 2 * Math.PI;

/** Source: Box, G. E. P., Muller, M. E. (1958). Ann. Math. Statist. 29, 610-611. */
function normal(uniform: () => number): number {
  return Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(TURN * uniform());
}

/** Source: Marsaglia, G., Tsang, W. W. (2000). ACM Trans. Math. Software 26, 363-372. */
function gamma(shape: number, uniform: () => number): number {
  if (shape < 1) return gamma(shape + 1, uniform) * (1 - uniform()) ** (1 / shape);
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = normal(uniform);
    const root = 1 + c * x;
    if (root <= 0) continue;
    const v = root * root * root;
    const square = x * x;
    const u = 1 - uniform();
    // The source's squeeze: what it takes the exact test takes, too, and it needs no logarithm.
    if (u < 1 - 0.0331 * square * square) return d * v;
    if (Math.log(u) < 0.5 * square + d - d * v + d * Math.log(v)) return d * v;
  }
}

/** Inverts the distribution upwards from none. The variance is small, so one end is near. */
function smallBinomial(of: number, chance: number, uniform: number): number {
  if (chance > 0.5) return of - smallBinomial(of, 1 - chance, uniform);
  let probability = (1 - chance) ** of;
  let left = uniform - probability;
  let count = 0;
  while (left >= 0 && count < of) {
    count += 1;
    probability *= ((of - count + 1) / count) * (chance / (1 - chance));
    left -= probability;
  }
  return count;
}
