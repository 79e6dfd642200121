import { type CivilDay, isoWeekday } from "../dates";
import type { Records } from "../records";

/**
 * For each day on which something was done on a weekday that is else free, so many others (our choice).
 * Where all seven are worked alike, one of them looks free by chance in 9 of 100 tables of 41 days, in 1 of
 * 100 of 57, in 2 of 10,000 of 100 (binomial, seven times that of one weekday).
 */
const OTHERS_FOR_ONE = 40;

export interface FreeWeekdays {
  /** ISO weekdays, 1 to 7, on which nothing is done but the odd day. */
  readonly weekdays: ReadonlySet<number>;
  /** Days on which something was done, each once, on the other weekdays. */
  readonly others: number;
  /** Whether any day lies after the as-of day. */
  readonly isAnyAhead: boolean;
}

/**
 * The weekdays on which a nursery does not work, by its habit, where some days are recorded for them
 * nevertheless; each day counts once, however many batches it stands in.
 *
 * @param asOf what lies after it is not done yet; null where nothing does
 */
export function freeWeekdays({ batches }: Records, asOf: CivilDay | null): FreeWeekdays {
  const end = asOf ?? Number.POSITIVE_INFINITY;
  let first = Number.POSITIVE_INFINITY;
  let last = Number.NEGATIVE_INFINITY;
  let isAnyAhead = false;
  for (const { days } of batches) {
    for (const day of days) {
      if (day === null) continue;
      if (day > end) isAnyAhead = true;
      else {
        if (day < first) first = day;
        if (day > last) last = day;
      }
    }
  }
  const on = [0, 0, 0, 0, 0, 0, 0, 0];
  if (first > last) return { weekdays: new Set(), others: 0, isAnyAhead };
  let total = 0;
  const isSeen = new Uint8Array(last - first + 1);
  for (const { days } of batches) {
    for (const day of days) {
      if (day === null || day > end || isSeen[day - first] === 1) continue;
      isSeen[day - first] = 1;
      on[isoWeekday(day)] = (on[isoWeekday(day)] as number) + 1;
      total += 1;
    }
  }
  const weekdays = on.flatMap((days, weekday) =>
    days > 0 && days * OTHERS_FOR_ONE <= total - days ? weekday : [],
  );
  const odd = weekdays.reduce((sum, weekday) => sum + (on[weekday] as number), 0);
  return { weekdays: new Set(weekdays), others: total - odd, isAnyAhead };
}
