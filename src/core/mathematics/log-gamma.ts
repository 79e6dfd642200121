/** From here on the series gives every digit that a double holds. */
const LARGE = 10;
/** B(2n) / (2n (2n − 1)) for n = 1, 2, … with Bernoulli's numbers B. */
const SERIES = [1 / 12, -1 / 360, 1 / 1260, -1 / 1680, 1 / 1188, -691 / 360360, 1 / 156];
const HALF_LOG_TWO_PI = Math.log(2 * Math.PI) / 2;

/**
 * The natural logarithm of the gamma function.
 *
 * @param x above 0
 *
 * Method: Stirling's series; a small x is first moved up by Γ(x + 1) = x Γ(x).
 * Source: NIST Digital Library of Mathematical Functions (dlmf.nist.gov), 5.5.1 and 5.11.1.
 */
export function logGamma(x: number): number {
  return (x - 0.5) * Math.log(x) - x + HALF_LOG_TWO_PI + stirlingRest(x);
}

/**
 * What is left of log Γ(x) when Stirling's (x − ½) log x − x + ½ log 2π is taken away.
 *
 * @param x above 0
 */
export function stirlingRest(x: number): number {
  let rest = 0;
  let y = x;
  for (; y < LARGE; y += 1) {
    // rest(y) − rest(y + 1), written so that nothing cancels where y is large.
    rest += (y + 0.5) * Math.log1p(1 / y) - 1;
  }
  let power = 1 / y;
  for (const coefficient of SERIES) {
    rest += coefficient * power;
    power /= y * y;
  }
  return rest;
}
