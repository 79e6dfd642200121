import { type CivilDay, civilDay, yearMonthDay } from "../dates";
import type { Step } from "../timetable";
import type { PlacedStep } from "./placed-steps";

/** A day that was swapped fits so much later than the last one, as a part of the usual days (our choice). */
const LATER = 0.5;

type Days = readonly (CivilDay | null)[];

/** A day that comes too soon after the nearest step above it that has one. */
export interface EarlyDay {
  readonly at: number;
  readonly step: Step;
  readonly day: CivilDay;
  readonly above: Step;
  readonly aboveAt: number;
  readonly aboveDay: CivilDay;
}

/** A day that fits in its place once its day and month change places. */
export interface SwappedDay {
  readonly at: number;
  readonly step: Step;
  readonly day: CivilDay;
  readonly fits: CivilDay;
  /** A step that it is out of order with as it is read. */
  readonly against: Step;
  readonly againstDay: CivilDay;
}

/** Whether a batch's days hold none that is too early; without making anything, since most hold none. */
export function isInOrder(days: Days, steps: readonly PlacedStep[]): boolean {
  for (const { at, above } of steps) {
    const day = days[at] ?? null;
    if (day === null) continue;
    for (const one of above) {
      const before = days[one.at] ?? null;
      if (before === null) continue;
      if (day - before < one.soonest) return false;
      break;
    }
  }
  return true;
}

/** The days of a batch that come before a step they hang on, or too soon after it. */
export function earlyDays(days: Days, steps: readonly PlacedStep[]): readonly EarlyDay[] {
  return steps.flatMap(({ step, at, above }) => {
    const day = days[at] ?? null;
    const nearest = above.find((one) => (days[one.at] ?? null) !== null);
    if (day === null || nearest === undefined) return [];
    const aboveDay = days[nearest.at] as CivilDay;
    if (day - aboveDay >= nearest.soonest) return [];
    return [{ at, step, day, above: nearest.step, aboveAt: nearest.at, aboveDay }];
  });
}

/**
 * The fewest days, one or two, that put a batch wholly into order when day and month are swapped in
 * them, as another person writes them; of several ways the one nearest to the timetable's usual days.
 *
 * @param early what earlyDays says of the batch
 * @param asOf  no day is turned to one that is still to come; null where none is
 * @returns none where no step is dated before another, or no such swap mends it
 */
export function swappedDays(
  days: Days,
  steps: readonly PlacedStep[],
  { early, asOf }: { readonly early: readonly EarlyDay[]; readonly asOf: CivilDay | null },
): readonly SwappedDay[] {
  if (early.every(({ day, aboveDay }) => day >= aboveDay)) return [];
  const turned = steps.flatMap((one) => {
    const fits = dayAndMonthSwapped(days[one.at] ?? null);
    return fits === null || (asOf !== null && fits > asOf) ? [] : [{ ...one, fits }];
  });
  const pairs = turned.flatMap((one, at) => turned.slice(at + 1).map((other) => [one, other]));
  for (const ways of [turned.map((one) => [one]), pairs]) {
    let best: (typeof turned)[number][] = [];
    let least = Number.POSITIVE_INFINITY;
    for (const way of ways) {
      const tried = [...days];
      for (const { at, fits } of way) tried[at] = fits;
      const off = isInOrder(tried, steps) ? daysFromUsual(tried, steps) : null;
      if (off !== null && off < least) [best, least] = [way, off];
    }
    const swapped = best.flatMap(({ at, step, fits }): SwappedDay[] => {
      const one = early.find((pair) => pair.at === at || pair.aboveAt === at);
      if (one === undefined) return [];
      const day = days[at] as CivilDay;
      return [
        one.at === at
          ? { at, step, day, fits, against: one.above, againstDay: one.aboveDay }
          : { at, step, day, fits, against: one.step, againstDay: one.day },
      ];
    });
    // A day that is in order with all others is none to be turned.
    if (swapped.length > 0 && swapped.length === best.length) return swapped;
  }
  return [];
}

/** 3 April for 4 March; null where there is none, or the day stays. */
function dayAndMonthSwapped(day: CivilDay | null): CivilDay | null {
  if (day === null) return null;
  const { year, month, day: ofMonth } = yearMonthDay(day);
  return month === ofMonth ? null : civilDay(year, ofMonth, month);
}

/** Days off the usual ones, summed; null where one is so late that the row is hardly meant so. */
function daysFromUsual(days: Days, steps: readonly PlacedStep[]): number | null {
  let off = 0;
  for (const { at, above } of steps) {
    const nearest = above.find((one) => (days[one.at] ?? null) !== null);
    const day = days[at] ?? null;
    if (day === null || nearest === undefined) continue;
    const after = day - (days[nearest.at] as CivilDay);
    if (after > nearest.by + nearest.usual * LATER) return null;
    off += Math.abs(after - nearest.usual);
  }
  return off;
}
