/**
 * Seeded draws: the same seed gives the same draws on every machine.
 *
 * Method: uniform draws from xoroshiro128+ (pure-rand); normal by Box and
 * Muller (1958), Ann. Math. Statist. 29:610-611; gamma by Marsaglia and Tsang
 * (2000), ACM Trans. Math. Softw. 26:363-372 (both citations from memory).
 */
import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";

/**
 * @typedef {object} Chance
 * @property {() => number} share uniform, 0 to below 1
 * @property {(low: number, high: number) => number} whole uniform whole number, both ends possible
 * @property {(probability: number) => boolean} happens
 * @property {<Name extends string>(weights: Readonly<Record<Name, number>>) => Name} pick a name, with chance proportional to its weight
 * @property {(count: number, mean: number, correlation: number) => number} betaBinomial plants kept of `count`
 * @property {(from: number, usual: number, by: number) => number} days whole days, PERT-shaped between from and by
 * @property {(mean: number) => number} delay whole days from 0, geometric
 */

/**
 * A source of draws.
 *
 * @param {number} seed whole number
 * @returns {Chance}
 */
export function createChance(seed) {
  const generator = xoroshiro128plus(scrambled(seed));
  const share = () => uniformFloat64(generator);
  const whole = (/** @type {number} */ low, /** @type {number} */ high) =>
    low + Math.floor(share() * (high - low + 1));

  const normal = () => Math.sqrt(-2 * Math.log(1 - share())) * Math.cos(2 * Math.PI * share());

  /** @param {number} shape 0 < shape @returns {number} */
  const gamma = (shape) => {
    if (shape < 1) return gamma(shape + 1) * (1 - share()) ** (1 / shape);
    const d = shape - 1 / 3;
    const c = 1 / Math.sqrt(9 * d);
    for (;;) {
      const x = normal();
      const v = (1 + c * x) ** 3;
      if (v > 0 && Math.log(1 - share()) < x * x * 0.5 + d * (1 - v + Math.log(v))) {
        return d * v;
      }
    }
  };

  const beta = (/** @type {number} */ a, /** @type {number} */ b) => {
    const left = gamma(a);
    return left / (left + gamma(b));
  };

  return {
    share,
    whole,
    happens: (probability) => share() < probability,
    pick: (weights) => {
      const names = /** @type {(keyof typeof weights)[]} */ (Object.keys(weights));
      const total = names.reduce((sum, name) => sum + weights[name], 0);
      let left = share() * total;
      for (const name of names) {
        left -= weights[name];
        if (left < 0) return name;
      }
      return /** @type {keyof typeof weights} */ (names.at(-1));
    },
    betaBinomial: (count, mean, correlation) => {
      const weight = 1 / correlation - 1;
      const own = beta(mean * weight, (1 - mean) * weight);
      let kept = 0;
      for (let plant = 0; plant < count; plant += 1) if (share() < own) kept += 1;
      return kept;
    },
    days: (from, usual, by) => {
      const width = by - from;
      const a = 1 + (4 * (usual - from)) / width;
      const b = 1 + (4 * (by - usual)) / width;
      return Math.round(from + width * beta(a, b));
    },
    delay: (mean) => Math.floor(Math.log(1 - share()) / Math.log(mean / (1 + mean))),
  };
}

/**
 * Neighbouring seeds would start with neighbouring draws; scrambled they do not.
 *
 * Method: the 32-bit finalizer of MurmurHash3 (from memory).
 *
 * @param {number} seed whole number
 * @returns {number} 32-bit whole number
 */
function scrambled(seed) {
  let bits = seed | 0;
  bits = Math.imul(bits ^ (bits >>> 16), 0x85ebca6b);
  bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35);
  return bits ^ (bits >>> 16);
}
