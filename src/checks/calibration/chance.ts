import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";

/** The shapes that a length of time may be drawn from. */
export type LengthShape = "lognormal" | "gamma";

/** Seeded draws: the same seeds give the same draws on every machine. */
export interface Chance {
  /** Uniform, 0 to below 1. */
  share(): number;
  between(low: number, high: number): number;
  /** Uniform whole number, both ends possible. */
  whole(low: number, high: number): number;
  happens(probability: number): boolean;
  pick<Thing>(things: readonly Thing[]): Thing;
  /** Mean 0, standard deviation 1. */
  normal(): number;
  /** Whole days from 0, geometric with the given mean. */
  delay(meanDays: number): number;
  /** A positive length with the given mean; variation = standard deviation ÷ mean. */
  length(shape: LengthShape, mean: number, variation: number): number;
  /** How many of `count` plants live, each with the same chance. */
  binomial(count: number, probability: number): number;
}

/**
 * A source of draws. Different lists of whole numbers give unrelated draws, so that every batch of
 * a nursery can have its own and no batch depends on what was drawn for another.
 *
 * Method: uniform draws from xoroshiro128+; normal by Box and Muller; gamma by Marsaglia and Tsang.
 * Sources (from memory): Box, G. E. P., Muller, M. E. (1958). Ann. Math. Statist. 29, 610-611.
 *   Marsaglia, G., Tsang, W. W. (2000). ACM Trans. Math. Softw. 26, 363-372.
 */
export function chanceOf(...seeds: readonly number[]): Chance {
  const generator = xoroshiro128plus(seeds.reduce((bits, seed) => scrambled(bits ^ seed), 0x5eed));
  const share = () => uniformFloat64(generator);
  const normal = () => Math.sqrt(-2 * Math.log(1 - share())) * Math.cos(2 * Math.PI * share());
  /** @param shape 1 or more */
  const gamma = (shape: number): number => {
    const d = shape - 1 / 3;
    const c = 1 / Math.sqrt(9 * d);
    for (;;) {
      const x = normal();
      const v = (1 + c * x) ** 3;
      if (v > 0 && Math.log(1 - share()) < x * x * 0.5 + d * (1 - v + Math.log(v))) return d * v;
    }
  };
  const whole = (low: number, high: number) => low + Math.floor(share() * (high - low + 1));
  return {
    share,
    between: (low, high) => low + (high - low) * share(),
    whole,
    happens: (probability) => share() < probability,
    pick: <Thing>(things: readonly Thing[]) => things[whole(0, things.length - 1)] as Thing,
    normal,
    delay: (meanDays) =>
      meanDays <= 0 ? 0 : Math.floor(Math.log(1 - share()) / Math.log(meanDays / (1 + meanDays))),
    length: (shape, mean, variation) => {
      const square = variation * variation;
      if (shape === "gamma") return mean * square * gamma(1 / square);
      const spread = Math.log(1 + square);
      return mean * Math.exp(Math.sqrt(spread) * normal() - spread / 2);
    },
    binomial: (count, probability) => {
      let alive = 0;
      for (let plant = 0; plant < count; plant += 1) if (share() < probability) alive += 1;
      return alive;
    },
  };
}

/**
 * Neighbouring seeds would start with neighbouring draws; scrambled they do not.
 *
 * Method: the 32-bit finalizer of MurmurHash3 (from memory), with a constant added first so that
 *   a seed of 0 does not stay 0.
 */
function scrambled(seed: number): number {
  let bits = (seed + 0x9e3779b9) | 0;
  bits = Math.imul(bits ^ (bits >>> 16), 0x85ebca6b);
  bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35);
  return bits ^ (bits >>> 16);
}
