import { stirlingRest } from "./log-gamma";

const PRECISION = 1e-16;
/** Stands in for 0 where the fraction would divide by it. */
const TINY = 1e-300;
/** Some 50 steps are needed where a + b is a thousand, and ten times as many at a hundred thousand. */
const MOST_STEPS = 100_000;

/**
 * The regularised incomplete beta function: the chance that a beta-distributed share is at most x.
 *
 * @param x a share; below 0 it is taken as 0, above 1 as 1
 * @param a above 0
 * @param b above 0
 * @returns 0 to 1, to about 13 digits
 *
 * Method: the continued fraction, on the side of the mean on which it converges fast, by Lentz's
 *   algorithm; its factor by Stirling's formula around the mean, so that no large numbers cancel.
 * Source: NIST Digital Library of Mathematical Functions (dlmf.nist.gov), 8.17.4 and 8.17.22; Lentz,
 *   W. J. (1976). Generating Bessel functions in Mie scattering calculations using continued
 *   fractions. Appl. Opt. 15, 668-671 (from memory). Loader, C. (2000). Fast and accurate computation
 *   of binomial probabilities (the factor around the mean; from memory).
 */
export function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const below: Tail = { x, y: 1 - x, a, b };
  const above: Tail = { x: below.y, y: x, a: b, b: a };
  return x * (a + b + 2) < a + 1 ? tail(below) : 1 - tail(above);
}

/** The chance below x, which lies below the mean. */
interface Tail {
  readonly x: number;
  /** 1 − x */
  readonly y: number;
  readonly a: number;
  readonly b: number;
}

function tail(sides: Tail): number {
  const { x, a, b } = sides;
  return factor(sides) / a / fraction(x, a, b);
}

/** x^a y^b / B(a, b). */
function factor({ x, y, a, b }: Tail): number {
  const sum = a + b;
  // How far x lies from the mean a / sum; both terms that are linear in it cancel exactly.
  const off = x < y ? x - a / sum : b / sum - y;
  const around =
    a * logLess((x * sum) / a, (off * sum) / a) + b * logLess((y * sum) / b, (-off * sum) / b);
  const rests = stirlingRest(sum) - stirlingRest(a) - stirlingRest(b);
  return Math.sqrt((a * b) / (2 * Math.PI * sum)) * Math.exp(around + rests);
}

/** log(ratio) − u, also where a ratio near 1 leaves little of it. @param u ratio − 1 */
function logLess(ratio: number, u: number): number {
  if (Math.abs(u) > 0.5) return Math.log(ratio) - u;
  const t = u / (2 + u);
  let power = 2 * t * t * t;
  let result = -u * t;
  for (let odd = 3; Math.abs(power) > PRECISION * Math.abs(result) * odd; odd += 2) {
    result += power / odd;
    power *= t * t;
  }
  return result;
}

/** 1 + d1/(1 + d2/(1 + …)) with the coefficients of 8.17.23. */
function fraction(x: number, a: number, b: number): number {
  let value = 1;
  let above = 1;
  let below = 0;
  for (let step = 1; step <= MOST_STEPS; step += 1) {
    const m = step >> 1;
    const d =
      step % 2 === 0
        ? (m * (b - m) * x) / ((a + step - 1) * (a + step))
        : (-(a + m) * (a + b + m) * x) / ((a + step - 1) * (a + step));
    below = 1 / (1 + d * below || TINY);
    above = 1 + d / above || TINY;
    const change = above * below;
    value *= change;
    if (Math.abs(change - 1) < PRECISION * 2) break;
  }
  return value;
}
