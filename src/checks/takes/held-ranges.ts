import { comparedTakes, summedTakes } from "../../core";
import type { Seeds } from "./settings";
import {
  groupName,
  recordsOf,
  type UnevenBatch,
  type UnevenTakes,
  unevenTakes,
} from "./uneven-takes";

/** How many ranges of 95 of 100 hold, and how wide they are. Shares are 0 to 1. */
export interface HeldTally {
  readonly held: number;
  /** The same of the group of fewest and of most batches. */
  readonly smallest: number;
  readonly largest: number;
  readonly width: number;
  /** Nurseries in which anyone reads above or below the rest. */
  readonly anyone: number;
}

const LEVEL = 0.95;

/** Ranges of TAKE_SUMMARY by grafter that hold the share which the grafter's batches take on average. */
export function summedHeld(kind: UnevenTakes, seeds: Seeds): HeldTally {
  return tallied(kind, seeds, (batches) => {
    const { groups } = summedTakes({ records: recordsOf(batches), by: "Grafter", level: LEVEL });
    return { anyone: false, groups, truthOf: (own) => weighedShare(own) };
  });
}

/**
 * Ranges of TAKE_COMPARED that hold what the evened rate would be, had every batch taken its own
 * average share: counts that chance moves no more.
 */
export function comparedHeld(kind: UnevenTakes, seeds: Seeds): HeldTally {
  return tallied(kind, seeds, (batches) => {
    const { groups } = comparedTakes({
      records: recordsOf(batches),
      by: "Grafter",
      evenFor: "Variety",
      level: LEVEL,
    });
    const overall = weighedShare(batches);
    const rateOf = new Map<number, number>();
    for (let variety = 0; variety < kind.varieties; variety += 1) {
      rateOf.set(variety, weighedShare(batches.filter((one) => one.variety === variety)));
    }
    const truthOf = (own: readonly UnevenBatch[]) => {
      let expected = 0;
      for (const { grafted, variety } of own) expected += grafted * (rateOf.get(variety) as number);
      return Math.min(1, (takenOnAverage(own) / expected) * overall);
    };
    const anyone = groups.some(({ reading }) => reading === "above" || reading === "below");
    return { anyone, groups, truthOf };
  });
}

interface AnsweredRange {
  readonly group: readonly string[];
  readonly from: number | null;
  readonly to: number | null;
}

interface Answered {
  readonly anyone: boolean;
  readonly groups: readonly AnsweredRange[];
  readonly truthOf: (own: readonly UnevenBatch[]) => number;
}

function tallied(
  kind: UnevenTakes,
  seeds: Seeds,
  answer: (batches: readonly UnevenBatch[]) => Answered,
): HeldTally {
  const held = kind.groups.map(() => ({ ranges: 0, right: 0 }));
  let width = 0;
  let anyone = 0;
  for (let seed = seeds.first; seed < seeds.first + seeds.count; seed += 1) {
    const batches = unevenTakes(kind, seed);
    const answered = answer(batches);
    if (answered.anyone) anyone += 1;
    const rangeOf = new Map(answered.groups.map((one) => [one.group.join(" "), one]));
    held.forEach((tally, group) => {
      const { from, to } = rangeOf.get(groupName(group)) ?? { from: null, to: null };
      if (from === null || to === null) return;
      const truth = answered.truthOf(batches.filter((one) => one.group === group));
      tally.ranges += 1;
      width += to - from;
      if (from <= truth && truth <= to) tally.right += 1;
    });
  }
  const share = (some: readonly { readonly ranges: number; readonly right: number }[]) => {
    const ranges = some.reduce((sum, one) => sum + one.ranges, 0);
    return some.reduce((sum, one) => sum + one.right, 0) / Math.max(1, ranges);
  };
  const ranges = held.reduce((sum, one) => sum + one.ranges, 0);
  return {
    held: share(held),
    smallest: share(held.slice(0, 1)),
    largest: share(held.slice(-1)),
    width: width / Math.max(1, ranges),
    anyone: anyone / seeds.count,
  };
}

function takenOnAverage(batches: readonly UnevenBatch[]): number {
  return batches.reduce((sum, { grafted, share }) => sum + grafted * share, 0);
}

function weighedShare(batches: readonly UnevenBatch[]): number {
  return takenOnAverage(batches) / batches.reduce((sum, { grafted }) => sum + grafted, 0);
}
