const MOST_STEPS = 100;

/**
 * The value below which a standard normal variable stays with a given chance.
 *
 * @param chance a share strictly between 0 and 1
 *
 * Method: Newton's, from the middle outward, which never steps beyond the goal; the distribution by
 *   its series of odd powers.
 * Source: Abramowitz, M., Stegun, I. A. (1964). Handbook of Mathematical Functions, 26.2.11.
 */
export function normalQuantile(chance: number): number {
  if (chance < 0.5) return -normalQuantile(1 - chance);
  let z = 0;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const density = Math.exp(-(z * z) / 2) / Math.sqrt(2 * Math.PI);
    const change = (chance - 0.5) / density - oddPowers(z);
    z += change;
    if (Math.abs(change) < 1e-15 * z) break;
  }
  return z;
}

/** z + z³/3 + z⁵/(3·5) + …: the chance between 0 and z, by the density at z. */
function oddPowers(z: number): number {
  let term = z;
  let sum = z;
  for (let odd = 3; term > 1e-17 * sum; odd += 2) {
    term *= (z * z) / odd;
    sum += term;
  }
  return sum;
}
