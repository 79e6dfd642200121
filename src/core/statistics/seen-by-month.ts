import { madeOnce } from "../made-once";

const MONTH_DAYS = 30.4375;
/** How much of what differs by itself is common to a month (our choice). */
const MONTH_SHARES = 0.3;

/** Something seen on a day, on a scale on which effects add up: log odds of a share, log of a length. */
export interface SeenOnDay {
  /** A civil day. */
  readonly day: number;
  readonly value: number;
  /** What chance alone makes of it; 0 for a length. */
  readonly chance: number;
  /** How much more it varies than others do, beside that; 1 for those alike. */
  readonly unit: number;
}

/** How much more than chance what was seen differs, for each unit. */
export function varianceLeft(seen: readonly SeenOnDay[]): number {
  const mean = seen.reduce((sum, { value }) => sum + value, 0) / seen.length;
  let squares = 0;
  let units = 0;
  for (const { value, chance, unit } of seen) {
    squares += (value - mean) ** 2 - chance;
    units += unit;
  }
  return Math.max(0.02, squares / units);
}

/**
 * What was seen in a month as one: batches of the same weeks share weather, seed and hands, so that many
 * of them are no more than a few.
 *
 * @param left variance beside chance, for each unit
 *
 * Method: means weighed by their variances; of what is left so much is common to a month, the rest
 *   each one's own.
 * Source: ours, by the variance of a sum.
 */
export function byMonth(seen: readonly SeenOnDay[], left: number): readonly SeenOnDay[] {
  const months = new Map<number, SeenOnDay[]>();
  for (const one of seen) madeOnce(months, Math.floor(one.day / MONTH_DAYS), () => []).push(one);
  return [...months.values()].map((own): SeenOnDay => {
    const weights = own.map(({ chance, unit }) => 1 / (chance + left * unit));
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    const mean = (of: (one: SeenOnDay) => number) =>
      own.reduce((sum, one, i) => sum + (weights[i] as number) * of(one), 0) / total;
    const squared = (of: (one: SeenOnDay) => number) =>
      own.reduce((sum, one, i) => sum + (weights[i] as number) ** 2 * of(one), 0) / total ** 2;
    return {
      day: mean(({ day }) => day),
      value: mean(({ value }) => value),
      chance: squared(({ chance }) => chance),
      unit:
        MONTH_SHARES * mean(({ unit }) => unit) + (1 - MONTH_SHARES) * squared(({ unit }) => unit),
    };
  });
}
