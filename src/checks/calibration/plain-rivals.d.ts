import type { RangesOf } from "./ranges";
/** What a person with a sheet would do with the past batches. */
export type PlainWay = "mean and sd" | "quantiles";
/**
 * Ranges by plain rules on the nursery's past batches: for days, how long past batches took from
 * the step last recorded to ready; for plants, what share of the plants last counted they brought
 * to ready. Batches of all varieties together, no timetable.
 *
 * The rivals are given their best: a range that reaches into the past starts tomorrow, and plants
 * lie between none and those standing.
 */
export declare function plainRanges(way: PlainWay): RangesOf;
/** The low and the high value that a plain rule expects; null when too few are past. */
export declare function plainSpread(
  values: readonly number[],
  way: PlainWay,
  level: number,
): readonly [number, number] | null;
