import { incompleteBeta } from "../mathematics";
import type { Beta } from "./beta-moments";

const HALVINGS = 50;

/**
 * The share below which a beta-distributed share falls with a given chance.
 *
 * @param chance 0 to 1
 *
 * Method: bisection on the regularised incomplete beta function, fifty times, which is as near as a
 *   double goes.
 * Source: Press, W. H., Teukolsky, S. A., Vetterling, W. T., Flannery, B. P. (1992). Numerical Recipes
 *   in C, 2nd ed., section 9.1 (bisection; citation looked up); checked against R's qbeta
 *   (tests/fixtures/beta-quantiles).
 */
export function betaQuantile({ a, b }: Beta, chance: number): number {
  if (chance <= 0) return 0;
  if (chance >= 1) return 1;
  let low = 0;
  let high = 1;
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (low + high) / 2;
    if (incompleteBeta(middle, a, b) < chance) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
