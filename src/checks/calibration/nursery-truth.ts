import { type Chance, chanceOf, type LengthShape } from "./chance";
import type { Change } from "./changes";

/** What sort of nursery to invent. */
export interface NurseryKind {
  /** Finished batches that it is wanted at; sets how busy it is. */
  readonly pastBatches: number;
  readonly varieties: "alike" | "unlike";
  /** What it breaks; nothing in most nurseries. */
  readonly change?: Change;
}

export interface Variety {
  readonly name: string;
  /** Added to the log odds of a take, and of a taken plant becoming ready. */
  readonly take: number;
  readonly ready: number;
  /** Added to the log of every length after grafting. */
  readonly slow: number;
}

/** What is true of one invented nursery, and which its records show only in part. */
export interface NurseryTruth {
  readonly seed: number;
  /** A civil day. */
  readonly firstDay: number;
  /** Days from one sowing to the next in the first year; growth makes them fewer. */
  readonly gapDays: number;
  readonly growthPerYear: number;
  readonly usualSeeds: number;
  readonly varieties: readonly Variety[];
  readonly grafters: readonly { readonly name: string; readonly take: number }[];
  /** Log odds of a plant passing each counted step, before any effect. */
  readonly logOdds: {
    readonly germinated: number;
    readonly grafted: number;
    readonly taken: number;
    readonly ready: number;
  };
  /** Standard deviation of a batch's own log odds at one step. */
  readonly batchNoise: number;
  readonly badBatches: number;
  readonly lostBatches: number;
  /** Change of the log odds of a take in a year, as hands learn or leave. */
  readonly drift: number;
  /** Change of the log of lengths in a year. */
  readonly dayDrift: number;
  /** Added to the log of lengths: the nursery is slower or faster than the timetable. */
  readonly slow: {
    readonly germination: number;
    readonly seedling: number;
    readonly graft: number;
  };
  /** A smooth wave through the year; its height in log lengths and in log odds. */
  readonly season: {
    readonly phase: number;
    readonly slow: number;
    readonly odds: number;
  };
  readonly shape: LengthShape;
  /** Batch-to-batch variation of lengths: below 1 for a steady nursery, above for a fitful one. */
  readonly fitfulness: number;
  /** Share of batches that stand still for a while at some step: a mixture of two sorts. */
  readonly stalls: number;
  /** Plants are looked over every so many days; a step is noted on the first such day after it. */
  readonly inspection: { readonly everyDays: number; readonly offset: number };
  readonly takesCountedAfter: number;
  readonly change: Change | null;
}

const EPOCH_2016 = 16801;
const VARIETY_NAMES = ["Amberlow", "Brindlecap", "Corvane", "Duskpod", "Ellowen"];
const GRAFTER_NAMES = ["Grafter A", "Grafter B", "Grafter C", "Grafter D"];
/** Where grafters come and go: so many over the years, of whom so many are there at once. */
const GRAFTERS_IN_ALL = 12;
const GRAFTERS_AT_ONCE = 3;
/** How unlike varieties are, as standard deviations of their effects. */
const UNLIKENESS = {
  alike: { take: 0.08, ready: 0.05, slow: 0.005 },
  unlike: { take: 0.5, ready: 0.3, slow: 0.03 },
};

/**
 * Invents a nursery. Every figure is our choice of what nurseries plausibly differ by; none comes
 * from a real one, and none is read from the timetable or from the model that is being checked.
 */
export function nurseryTruth(kind: NurseryKind, seed: number): NurseryTruth {
  const usual = usualTruth(kind, seed);
  const { change } = kind;
  return change === undefined ? usual : { ...usual, ...changedTruth(usual, change) };
}

/** Sowings two and a half years long, of about 36 batches that finish, and what is said to change. */
function changedTruth(usual: NurseryTruth, change: Change): Partial<NurseryTruth> {
  const { takeDrift = 0, dayDrift = 0, season, deaths, varieties, turnover } = change;
  const chance = chanceOf(usual.seed, 21);
  const named = (name: string, count: number) =>
    Array.from({ length: count }, (_, at) => `${name} ${String(at + 1).padStart(2, "0")}`);
  const { alike, unlike } = UNLIKENESS;
  return {
    change,
    gapDays: 18,
    growthPerYear: 0,
    drift: takeDrift,
    dayDrift,
    ...(season && { season: { ...usual.season, ...season } }),
    ...(deaths && { lostBatches: deaths.share }),
    ...(varieties && {
      varieties: named("Variety", varieties).map((name) => ({
        name,
        take: (alike.take + unlike.take) * 0.5 * chance.normal(),
        ready: alike.ready * chance.normal(),
        slow: alike.slow * chance.normal(),
      })),
    }),
    ...(turnover && {
      grafters: named("Grafter", GRAFTERS_IN_ALL).map((name) => ({
        name,
        take: turnover * chance.normal(),
      })),
    }),
  };
}

/** The grafters at work on a day: all of them, or where they come and go a few. */
export function graftersOn(
  { grafters, change, firstDay }: NurseryTruth,
  day: number,
): NurseryTruth["grafters"] {
  if (change?.turnover === undefined) return grafters;
  const gone = Math.floor(((day - firstDay) / 365.25) * 2);
  const first = Math.max(0, Math.min(gone, grafters.length - GRAFTERS_AT_ONCE));
  return grafters.slice(first, first + GRAFTERS_AT_ONCE);
}

/** What a month does to all that is in it, standard normal: to lengths, to log odds. */
export function shockOn(
  { seed, change }: NurseryTruth,
  day: number,
): { slow: number; odds: number } {
  if (change?.shocks === undefined) return { slow: 0, odds: 0 };
  const chance = chanceOf(seed, 22, Math.floor(day / 30.4375));
  return { slow: change.shocks.slow * chance.normal(), odds: change.shocks.odds * chance.normal() };
}

function usualTruth({ pastBatches, varieties }: NurseryKind, seed: number): NurseryTruth {
  const chance = chanceOf(seed, 1);
  const unlike = UNLIKENESS[varieties];
  const [leastGap, mostGap] = gapRange(pastBatches);
  return {
    seed,
    firstDay: EPOCH_2016 + chance.whole(0, 730),
    gapDays: Math.exp(chance.between(Math.log(leastGap), Math.log(mostGap))),
    growthPerYear: chance.between(0, 0.35),
    usualSeeds: Math.exp(chance.between(Math.log(40), Math.log(350))),
    varieties: VARIETY_NAMES.map((name) => ({
      name,
      take: unlike.take * chance.normal(),
      ready: unlike.ready * chance.normal(),
      slow: unlike.slow * chance.normal(),
    })),
    grafters: GRAFTER_NAMES.slice(0, chance.whole(2, 4)).map((name) => ({
      name,
      take: 0.2 * chance.normal(),
    })),
    logOdds: {
      germinated: about(chance, 0.85),
      grafted: about(chance, 0.8),
      taken: about(chance, 0.77),
      ready: about(chance, 0.91),
    },
    batchNoise: chance.between(0.2, 0.5),
    badBatches: chance.between(0.02, 0.08),
    lostBatches: chance.between(0, 0.03),
    drift: 0.02 + 0.05 * chance.normal(),
    dayDrift: 0,
    slow: {
      germination: 0.1 * chance.normal(),
      seedling: 0.08 * chance.normal(),
      graft: 0.035 * chance.normal(),
    },
    season: {
      phase: chance.share(),
      slow: chance.between(0, 0.035),
      odds: chance.between(0, 0.4),
    },
    shape: chance.happens(0.5) ? "lognormal" : "gamma",
    fitfulness: chance.between(0.5, 1),
    stalls: chance.happens(0.35) ? chance.between(0.05, 0.15) : 0,
    inspection: inspectionHabit(chance),
    takesCountedAfter: chance.whole(28, 31),
    change: null,
  };
}

/** The season's wave on a day, -1 to 1. */
export function seasonOn({ season }: NurseryTruth, day: number): number {
  return Math.cos(2 * Math.PI * (day / 365.25 - season.phase));
}

/** A nursery with three finished batches is a small one, with three hundred a busy one. */
function gapRange(pastBatches: number): readonly [number, number] {
  if (pastBatches < 10) return [8, 25];
  return pastBatches < 100 ? [5, 16] : [1.8, 5];
}

/** Log odds of a nursery's own share, better or worse than the usual one. */
function about(chance: Chance, share: number): number {
  return Math.log(share / (1 - share)) + 0.35 * chance.normal();
}

function inspectionHabit(chance: Chance): NurseryTruth["inspection"] {
  const habit = chance.share();
  const everyDays = habit < 0.55 ? 1 : habit < 0.65 ? 3 : 7;
  return { everyDays, offset: chance.whole(0, everyDays - 1) };
}
