import { incompleteBeta } from "../mathematics";
import { betaQuantile } from "./beta-quantile";

/**
 * The chance that Student's t lies as far from 0 as this or farther, on either side.
 *
 * @param degreesOfFreedom above 0, need not be whole
 *
 * Method: the distribution as an incomplete beta function.
 * Source: Abramowitz, M., Stegun, I. A. (1964). Handbook of Mathematical Functions, 26.7.1 (looked
 *   up) with 26.5.2 (number from memory); checked against R's pt.
 */
export function beyondT(t: number, degreesOfFreedom: number): number {
  return incompleteBeta(degreesOfFreedom / (degreesOfFreedom + t * t), degreesOfFreedom / 2, 0.5);
}

/**
 * How far from 0 Student's t stays with a given chance.
 *
 * @param level a share strictly between 0 and 1
 * @returns above 0; equals R's qt((1 + level) / 2, degreesOfFreedom)
 */
export function reachOfT(level: number, degreesOfFreedom: number): number {
  const x = betaQuantile({ a: degreesOfFreedom / 2, b: 0.5 }, 1 - level);
  // A level next to 1 on few degrees of freedom reaches farther than a double can say.
  return Math.sqrt((degreesOfFreedom * (1 - x)) / Math.max(x, 1e-300));
}

/**
 * The chance that F is this large or larger.
 *
 * @param f     0 or more
 * @param above degrees of freedom of the numerator, above 0, need not be whole
 * @param below degrees of freedom of the denominator, likewise
 *
 * Method: the distribution as an incomplete beta function.
 * Source: Abramowitz, M., Stegun, I. A. (1964). Handbook of Mathematical Functions, 26.6.2 (number
 *   looked up); checked against R's pf (tests/fixtures/student-f).
 */
export function beyondF(f: number, above: number, below: number): number {
  return incompleteBeta(below / (below + above * f), below / 2, above / 2);
}
