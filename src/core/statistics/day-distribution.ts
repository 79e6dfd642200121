import { totalOf } from "../mathematics";
/** Chances on whole days: mass[i] is the chance of day first + i. They add up to 1. */
export interface DayDistribution {
  readonly first: number;
  readonly mass: Float64Array;
}

/** A day that is certain. */
export function pointAt(day: number): DayDistribution {
  return { first: day, mass: Float64Array.of(1) };
}

/**
 * The distribution of the sum of two independent numbers of days, exactly.
 *
 * Method: convolution.
 * Source: Grinstead, C. M., Snell, J. L. (1997). Introduction to Probability, 2nd ed., section 7.1
 *   (convolution; read there).
 */
export function sum(one: DayDistribution, other: DayDistribution): DayDistribution {
  const mass = new Float64Array(one.mass.length + other.mass.length - 1);
  for (let i = 0; i < one.mass.length; i += 1) {
    const chance = one.mass[i] as number;
    if (chance === 0) continue;
    for (let j = 0; j < other.mass.length; j += 1) {
      mass[i + j] = (mass[i + j] as number) + chance * (other.mass[j] as number);
    }
  }
  return { first: one.first + other.first, mass };
}

/** The mean of the days. */
export function meanDay({ first, mass }: DayDistribution): number {
  return mass.reduce((sum, chance, at) => sum + chance * (first + at), 0);
}

/**
 * What is left of a distribution when only some days are still possible.
 *
 * @returns null when none of the days has any chance
 */
export function onlyDays(
  distribution: DayDistribution,
  from: number,
  by: number,
): DayDistribution | null {
  const start = Math.max(0, from - distribution.first);
  const end = Math.min(distribution.mass.length, by - distribution.first + 1);
  if (start >= end) return null;
  const mass = distribution.mass.slice(start, end);
  const total = totalOf(mass);
  if (!(total > 1e-12)) return null;
  return { first: distribution.first + start, mass: mass.map((chance) => chance / total) };
}

/**
 * The first day by which the chance reaches `chance`.
 *
 * @param chance above 0, up to 1
 */
export function dayQuantile({ first, mass }: DayDistribution, chance: number): number {
  let total = 0;
  for (let i = 0; i < mass.length; i += 1) {
    total += mass[i] as number;
    // A hair of rounding must not move a quantile by a day.
    if (total >= chance - 1e-9) return first + i;
  }
  return first + mass.length - 1;
}
