/** Units that are there from one day on. */
export interface Supply {
  /** Whole number, 0 or more. */
  readonly units: number;
  /** Whole number. */
  readonly day: number;
}

/** Units of one sort, by day. */
export interface Stock {
  /** Rising. */
  readonly days: number[];
  readonly free: number[];
  /** Index of the first day of which units are free. */
  firstFree: number;
}

/** Units of a sort that are there on one of its days. */
export interface Units {
  readonly sort: number;
  /** Index in the sort's days. */
  readonly at: number;
}

/**
 * Puts supplies together by sort and day.
 *
 * @param sortOf by index of the supply: its sort, from 0; -1 where nobody wants it
 * @returns by sort its stock; and the days of all of them, rising
 */
export function stocksOf(
  supplies: readonly Supply[],
  sortOf: readonly number[],
  sorts: number,
): { readonly stocks: readonly Stock[]; readonly days: readonly number[] } {
  const stocks = Array.from({ length: sorts }, (): Stock => ({ days: [], free: [], firstFree: 0 }));
  const days: number[] = [];
  const count = supplies.length;
  // Day and index in one number: numbers alone are sorted fastest.
  const byDay = Float64Array.from(supplies, ({ day }, index) => day * count + index).sort();
  for (const key of byDay) {
    const day = Math.floor(key / count);
    const index = key - day * count;
    const stock = stocks[sortOf[index] ?? -1];
    const units = supplies[index]?.units ?? 0;
    if (stock === undefined || units === 0) continue;
    if (days[days.length - 1] !== day) days.push(day);
    const last = stock.days.length - 1;
    if (stock.days[last] === day) stock.free[last] = (stock.free[last] as number) + units;
    else {
      stock.days.push(day);
      stock.free.push(units);
    }
  }
  return { stocks, days };
}

/** How many of the days, which rise, lie on or before a day. */
export function daysUpTo(days: readonly number[], day: number): number {
  let low = 0;
  let high = days.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((days[middle] as number) <= day) low = middle + 1;
    else high = middle;
  }
  return low;
}
