import { incompleteBeta, logGamma } from "../mathematics";
import type { Beta } from "./beta-moments";
import { betaQuantile } from "./beta-quantile";
import { nearestEnds } from "./nearest-ends";

/** Above this many plants a count is as good as a share: its own chance adds under half a plant in 100. */
const SUMMED_UP_TO = 5000;

/**
 * The numbers of plants below which a beta-binomial count stays with given chances.
 *
 * @param plants whole number, 0 or more
 * @param chances each 0 to 1, rising
 * @returns for each chance the smallest whole number k with P(count ≤ k) ≥ chance
 *
 * Method: summing the probabilities upwards by their ratio, each term relative to the mode's so
 *   that nothing underflows; above 5,000 plants the beta that has the count's own mean and variance.
 * Source: Griffiths, D. A. (1973). Maximum likelihood estimation for the beta-binomial
 *   distribution. Biometrics 29, 637-648 (the distribution).
 */
export function betaBinomialQuantiles(
  plants: number,
  share: Beta,
  chances: readonly number[],
): number[] {
  if (plants === 0) return chances.map(() => 0);
  if (plants > SUMMED_UP_TO) return manyPlants(plants, share, chances);
  const probabilities = betaBinomialProbabilities(plants, share);
  const quantiles: number[] = [];
  let count = 0;
  let sum = probabilities[0] as number;
  for (const chance of chances) {
    // A sum of thousands of terms ends a hair below 1; the last plant is the end all the same.
    while (sum < chance - 1e-12 && count < plants) {
      count += 1;
      sum += probabilities[count] as number;
    }
    quantiles.push(count);
  }
  return quantiles;
}

/**
 * The range of plants that holds with a given chance, as nearly as whole plants allow, and the middle.
 *
 * The ends are the whole numbers at which the chance outside comes nearest to what it should be on
 * each side. Quantiles rounded outward would hold more often than they say, the more so the fewer
 * the plants.
 */
export function betaBinomialRange(
  plants: number,
  share: Beta,
  level: number,
): { readonly fewest: number; readonly likely: number; readonly most: number } {
  const side = (1 - level) / 2;
  if (plants === 0 || plants > SUMMED_UP_TO) {
    const [fewest, likely, most] = betaBinomialQuantiles(plants, share, [side, 0.5, 1 - side]);
    return { fewest: fewest as number, likely: likely as number, most: most as number };
  }
  const { low, middle, high } = nearestEnds(betaBinomialProbabilities(plants, share), side);
  return { fewest: low, likely: middle, most: high };
}

/**
 * The chance that a beta-binomial count reaches a number, 0 to 1.
 *
 * Method: the sum of the probabilities; above 5,000 plants the beta that has the count's own mean
 *   and variance, half a plant below the number.
 */
export function betaBinomialChanceOfAtLeast(wanted: number, plants: number, share: Beta): number {
  if (wanted <= 0) return 1;
  if (wanted > plants) return 0;
  if (plants > SUMMED_UP_TO) {
    const { a, b } = widened(plants, share);
    return 1 - incompleteBeta((wanted - 0.5) / plants, a, b);
  }
  const probabilities = betaBinomialProbabilities(plants, share);
  let chance = 0;
  for (let count = plants; count >= wanted; count -= 1) chance += probabilities[count] as number;
  return Math.min(1, chance);
}

/** P(count = k) for k = 0 … plants. */
export function betaBinomialProbabilities(plants: number, { a, b }: Beta): Float64Array {
  const probabilities = new Float64Array(plants + 1);
  const start = Math.min(plants, Math.max(0, Math.round((plants * a) / (a + b))));
  probabilities[start] = Math.exp(
    logChoose(plants, start) + logBeta(start + a, plants - start + b) - logBeta(a, b),
  );
  for (let k = start; k < plants; k += 1) {
    probabilities[k + 1] =
      (probabilities[k] as number) * (((plants - k) / (k + 1)) * ((k + a) / (plants - k - 1 + b)));
  }
  for (let k = start; k > 0; k -= 1) {
    probabilities[k - 1] =
      (probabilities[k] as number) * ((k / (plants - k + 1)) * ((plants - k + b) / (k - 1 + a)));
  }
  return probabilities;
}

function manyPlants(plants: number, share: Beta, chances: readonly number[]): number[] {
  const matching = widened(plants, share);
  return chances.map((chance) => Math.round(plants * betaQuantile(matching, chance)));
}

/** The beta with the mean and variance of the count's share of so many plants. */
function widened(plants: number, { a, b }: Beta): Beta {
  // Var(X/n) = m(1−m)(1/(s+1)) (1 + s/n)… so the matching sum is (s+1)/(1+s/n) − 1.
  const sum = a + b;
  const scale = ((sum + 1) / (1 + sum / plants) - 1) / sum;
  return { a: a * scale, b: b * scale };
}

function logBeta(a: number, b: number): number {
  return logGamma(a) + logGamma(b) - logGamma(a + b);
}

function logChoose(n: number, k: number): number {
  return logGamma(n + 1) - logGamma(k + 1) - logGamma(n - k + 1);
}
