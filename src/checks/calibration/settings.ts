import { chanceOf } from "./chance";
import { CHANGES } from "./changes";
import { type NurseryHistory, nurseryHistory } from "./nursery-history";
import type { NurseryKind } from "./nursery-truth";

export const LEVELS: readonly number[] = [0.8, 0.95];

/** The nurseries that ranges are checked on: few, some and many past batches. */
export const KINDS: readonly NurseryKind[] = [3, 30, 300].flatMap((pastBatches) =>
  (["alike", "unlike"] as const).map((varieties) => ({ pastBatches, varieties })),
);
/** Those that break what a forecast takes for granted, one thing each. */
export const CHANGED_KINDS: readonly NurseryKind[] = CHANGES.map((change) => ({
  pastBatches: 36,
  varieties: "unlike",
  change,
}));

/** Finished batches at the as-of days of one nursery: about the number wanted. */
const PAST_AT: ReadonlyMap<number, readonly number[]> = new Map([
  [3, [2, 3, 4]],
  [30, [27, 30, 33]],
  [36, [33, 36, 39]],
  [300, [290, 300, 310]],
]);
/** As-of days lie up to so long after the finish that they follow. */
const LAG_DAYS = 13;

export interface CheckedNursery {
  readonly history: NurseryHistory;
  readonly asOfDays: readonly number[];
}

/** An invented nursery, and the days on which it is asked. */
export function checkedNursery(kind: NurseryKind, seed: number): CheckedNursery {
  const pastAt = PAST_AT.get(kind.pastBatches);
  if (pastAt === undefined) throw new Error(`no as-of days for ${kind.pastBatches} past batches`);
  const history = nurseryHistory(kind, seed, { finishedWanted: Math.max(...pastAt) });
  const chance = chanceOf(seed, 6);
  const asOfDays = pastAt.map(
    (finished) => (history.finishedOn[finished - 1] as number) + chance.whole(0, LAG_DAYS),
  );
  return { history, asOfDays };
}
