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
export declare function chanceOf(...seeds: readonly number[]): Chance;
