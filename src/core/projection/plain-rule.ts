import { type CivilDay, daysLater } from "../dates";
import { madeOnce } from "../made-once";
import { intervalScore, plainQuantile } from "../statistics";
import type { BatchState } from "./batch-state";

export interface Ends {
  readonly low: number;
  readonly high: number;
}

/** Ends of what a plain rule says of a batch; null where too few batches are finished. */
export interface PlainRanges {
  readonly days: Ends | null;
  readonly plants: Ends | null;
}

/** With fewer finished batches nobody would take the ends of what they did for a range (our choice). */
const FEWEST_FINISHED = 5;

/**
 * What a person with a sheet would say of a batch: how long finished batches of its method took from the
 * same last step until ready, and what share of the plants of the same last count became ready, without
 * the shortest and the longest of them. No timetable and no varieties.
 *
 * @param states where all batches stand on the day it is said
 */
export function plainRule(
  states: readonly BatchState[],
  level: number,
): (state: BatchState) => PlainRanges {
  const side = (1 - level) / 2;
  const spreadOf = (values: readonly number[]): Ends | null =>
    values.length < FEWEST_FINISHED
      ? null
      : { low: plainQuantile(values, side), high: plainQuantile(values, 1 - side) };
  const known = new Map<string, Ends | null>();
  const ofFinished = (
    { method }: BatchState,
    what: string,
    measure: (finished: BatchState) => number | null,
  ) =>
    madeOnce(known, `${method.name}\n${what}`, () => {
      const finished = states.filter((state) => state.method === method);
      return spreadOf(finished.flatMap((state) => measure(state) ?? []));
    });
  return (state) => {
    const { lastDone, lastCounted, plants, method, asOf } = state;
    const lasted =
      lastDone === null
        ? null
        : ofFinished(state, `days ${lastDone}`, ({ doneOn }) =>
            difference(doneOn[method.ready], doneOn[lastDone]),
          );
    const kept =
      lastCounted === null
        ? null
        : ofFinished(state, `plants ${lastCounted}`, ({ counts }) =>
            shareOf(counts[method.ready], counts[lastCounted]),
          );
    return {
      days:
        lasted === null
          ? null
          : daysFrom(state.doneOn[lastDone as number] as CivilDay, lasted, asOf),
      plants: kept === null || plants === null ? null : plantsOf(plants, kept),
    };
  };
}

/** A range that reaches into what is past starts tomorrow. */
function daysFrom(anchor: CivilDay, { low, high }: Ends, asOf: CivilDay): Ends {
  const [from, by] = [low, high].map((days) => daysLater(anchor, Math.round(days)));
  const ends = { low: from as number, high: by as number };
  return ends.high > asOf ? { ...ends, low: Math.max(ends.low, asOf + 1) } : ends;
}

function plantsOf(standing: number, { low, high }: Ends): Ends {
  const within = (share: number) => Math.min(standing, Math.round(standing * share));
  return { low: within(low), high: within(high) };
}

function difference(later: number | null | undefined, earlier: number | null | undefined) {
  return later == null || earlier == null || later < earlier ? null : later - earlier;
}

function shareOf(part: number | null | undefined, whole: number | null | undefined) {
  return part == null || whole == null || whole === 0 ? null : part / whole;
}

/** What became of a batch, with what each of the two said of it. */
export interface Duel {
  readonly ours: Ends;
  readonly plain: Ends;
  /** Null for a day that never came: both missed it, and by how much cannot be said. */
  readonly truth: number | null;
  /** In which misses are told: a miss of ten plants is less in a large batch. */
  readonly unit: number;
}

/** How a plain rule did beside the forecast, on those batches of which both said something. */
export interface PlainRuleTally {
  readonly held: number;
  readonly all: number;
  readonly did: "better" | "alike" | "worse";
}

/** Scores apart by less than this share are alike: so few batches tell no more (our choice). */
const ALIKE = 0.1;

/** Who did better is told by the interval score of both. @returns null where there is nothing to compare */
export function plainRuleTally(duels: readonly Duel[], level: number): PlainRuleTally | null {
  if (duels.length === 0) return null;
  const scoreOf = (who: "ours" | "plain") =>
    duels.reduce(
      (sum, { truth, unit, [who]: ends }) =>
        truth === null ? sum : sum + intervalScore({ ...ends, truth }, level) / unit,
      0,
    );
  const [ours, plain] = [scoreOf("ours"), scoreOf("plain")];
  const holds = ({ plain: { low, high }, truth }: Duel) =>
    truth !== null && truth >= low && truth <= high;
  return {
    held: duels.filter(holds).length,
    all: duels.length,
    did: plain < ours * (1 - ALIKE) ? "better" : plain > ours * (1 + ALIKE) ? "worse" : "alike",
  };
}
