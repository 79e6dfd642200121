import type { CivilDay } from "../dates";
import { madeOnce } from "../made-once";
import { type SeenOnDay, type TimeEffect, timeEffect } from "../statistics";
import type { Method } from "../timetable";
import type { BatchState } from "./batch-state";
import type { Way } from "./forecaster";

/**
 * How far a nursery's lengths and shares are believed to change, with the weight of each belief: most
 * hardly do (our choice; npm run check:changes shows what it is worth).
 */
const LENGTHS = {
  drift: [
    { sd: 0, weight: 0.7 },
    { sd: 0.03, weight: 0.15 },
    { sd: 0.1, weight: 0.15 },
  ],
  season: [
    { sd: 0, weight: 0.5 },
    { sd: 0.05, weight: 0.3 },
    { sd: 0.15, weight: 0.2 },
  ],
} as const;
const SHARES = {
  drift: [
    { sd: 0, weight: 0.7 },
    { sd: 0.2, weight: 0.15 },
    { sd: 0.5, weight: 0.15 },
  ],
  season: [
    { sd: 0, weight: 0.5 },
    { sd: 0.2, weight: 0.25 },
    { sd: 0.5, weight: 0.25 },
  ],
} as const;

/** Steps shorter than this, in days, tell little: a day more or less is chance. */
const SHORTEST = 5;
/** Least variance of the logarithm of a length: days are whole, and are seen when somebody looks. */
const LEAST_VARIANCE = 0.002;
/** Of the batches that went a way, so many have by a day: the others are not looked at before it. */
const NEARLY_ALL = 0.95;
/** Batches that a variety is worth as one of all. */
const ALL_VARIETIES_WORTH = 3;

/** Days that have one effect: nothing changes much from one to the next. */
const ALIKE_DAYS = 10;

/** The middle of the days that are alike, so that what follows from one is found once for all. */
export function dayAbout(day: CivilDay): CivilDay {
  return ((Math.floor(day / ALIKE_DAYS) + 0.5) * ALIKE_DAYS) as CivilDay;
}

/** Beside the records' mean: the logarithm of how many times, or of odds, and its variance. */
type DayEffect = ReturnType<TimeEffect["on"]>;

/** What days do to how long steps take. */
export interface LengthChange {
  /** What it does to a way by the day on which it begins; found once for days that are alike. */
  along(way: Omit<Way, "from">): (from: CivilDay) => DayEffect;
}

/** What a day does, found once for days that are alike. */
export function byDaysAlike(effect: (day: CivilDay) => DayEffect): (day: CivilDay) => DayEffect {
  const known = new Map<CivilDay, DayEffect>();
  return (day) => {
    const about = dayAbout(day);
    return madeOnce(known, about, () => effect(about));
  };
}

/**
 * What a day does to how long steps take: to all before grafting alike, and to all after it, since the
 * same weather slows them.
 */
export function changeOfLengths(
  method: Method,
  states: readonly BatchState[],
): LengthChange | null {
  const asOf = states[0]?.asOf;
  if (asOf === undefined) return null;
  const grafting = method.steps.findIndex(({ key }) => key === "grafting");
  const isLater = (step: number) => step > grafting;
  const seen = method.steps.flatMap(({ after, usual }, upTo) =>
    after === null || usual < SHORTEST ? [] : lengthsSeen(states, { after, upTo, asOf }),
  );
  const [sooner = null, later = null] = [false, true].map((which) =>
    timeEffect(byBatch(seen.filter(({ upTo }) => isLater(upTo) === which)), asOf, LENGTHS),
  );
  if (sooner === null && later === null) return null;
  return {
    along: ({ after, upTo }) => {
      const line = stepsBetween(method, after, upTo);
      return byDaysAlike((from) => {
        let usualDays = 0;
        let days = 0;
        let deviations = 0;
        for (const step of line) {
          const usual = Math.max(1, method.steps[step]?.usual ?? 0);
          const effect = isLater(step) ? later : sooner;
          const { shift, variance } = effect?.on(from + usualDays + usual / 2) ?? NO_CHANGE;
          usualDays += usual;
          days += usual * Math.exp(shift);
          deviations += usual * Math.sqrt(variance);
        }
        return { shift: Math.log(days / usualDays), variance: (deviations / usualDays) ** 2 };
      });
    },
  };
}

const NO_CHANGE = { shift: 0, variance: 0 };

/** The steps that a way goes through, by what each is counted from. */
function stepsBetween({ steps }: Method, after: number, upTo: number): readonly number[] {
  const line = [upTo];
  for (
    let at = steps[upTo]?.after ?? null;
    at !== null && at > after;
    at = steps[at]?.after ?? null
  ) {
    line.unshift(at);
  }
  return line;
}

interface SeenLength extends SeenOnDay {
  readonly batch: BatchState;
  readonly upTo: number;
}

/** What a batch's steps say as one: they share its hands and its place. */
function byBatch(seen: readonly SeenLength[]): readonly SeenOnDay[] {
  const batches = new Map<BatchState, SeenLength[]>();
  for (const one of seen) madeOnce(batches, one.batch, () => []).push(one);
  return [...batches.values()].map((own): SeenOnDay => {
    const total = own.reduce((sum, { unit }) => sum + 1 / unit, 0);
    const mean = (of: (one: SeenLength) => number) =>
      own.reduce((sum, one) => sum + of(one) / one.unit, 0) / total;
    return {
      day: mean(({ day }) => day),
      value: mean(({ value }) => value),
      chance: 0,
      unit: 1 / total,
    };
  });
}

function lengthsSeen(
  states: readonly BatchState[],
  { after, upTo, asOf }: { readonly after: number; readonly upTo: number; readonly asOf: number },
): readonly SeenLength[] {
  const lengths = states.flatMap((batch) => {
    const [start, day] = [batch.doneOn[after] ?? null, batch.doneOn[upTo] ?? null];
    return start === null || day === null || day < start
      ? []
      : [{ batch, start, days: day - start }];
  });
  if (lengths.length < 3) return [];
  const sorted = lengths.map(({ days }) => days).sort((a, b) => a - b);
  // Of batches that began lately only the quick ones are done.
  const within = sorted[Math.floor(NEARLY_ALL * (sorted.length - 1))] as number;
  const old = lengths.filter(({ start }) => start <= asOf - within);
  const logs = old.map(({ days }) => Math.log(days + 0.5));
  const mean = logs.reduce((sum, log) => sum + log, 0) / logs.length;
  const squares = logs.reduce((sum, log) => sum + (log - mean) ** 2, 0);
  const unit = Math.max(LEAST_VARIANCE, squares / Math.max(1, logs.length - 1));
  return old.map(({ batch, start, days }, at) => ({
    batch,
    upTo,
    day: start + days / 2,
    value: (logs[at] as number) - mean,
    chance: 0,
    unit,
  }));
}

/** One batch's count at a step and the next, with the day from which it went there. */
export interface CountOnDay {
  readonly variety: string;
  readonly kept: number;
  readonly of: number;
  /** Null where not written. */
  readonly day: CivilDay | null;
}

/** What a day does to the log odds of a plant's passing. */
export function changeOfShare(counts: readonly CountOnDay[], asOf: number): TimeEffect | null {
  const dated = counts.flatMap(({ variety, kept, of, day }) =>
    day === null || kept === 0
      ? []
      : [
          {
            variety,
            day,
            value: Math.log((kept + 0.5) / (of - kept + 0.5)),
            chance: 1 / (kept + 0.5) + 1 / (of - kept + 0.5),
          },
        ],
  );
  const mean = dated.reduce((sum, { value }) => sum + value, 0) / Math.max(1, dated.length);
  const ofVariety = new Map<string, { sum: number; batches: number }>();
  for (const { variety, value } of dated) {
    const known = ofVariety.get(variety) ?? { sum: 0, batches: 0 };
    known.sum += value - mean;
    known.batches += 1;
    ofVariety.set(variety, known);
  }
  const seen = dated.map(({ variety, day, value, chance }): SeenOnDay => {
    const { sum = 0, batches = 0 } = ofVariety.get(variety) ?? {};
    return { day, value: value - mean - sum / (batches + ALL_VARIETIES_WORTH), chance, unit: 1 };
  });
  return timeEffect(seen, asOf, SHARES);
}
