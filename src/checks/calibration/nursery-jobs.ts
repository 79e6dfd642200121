import { RANGES_OF } from "./ranges";
import { type NurseryScore, scoreNursery } from "./score-nursery";
import { type CheckedNursery, checkedNursery, KINDS, LEVELS } from "./settings";

/** One nursery to be scored: its kind's place in KINDS, and its number within the kind. */
export interface NurseryJob {
  readonly kind: number;
  readonly number: number;
}

/** Seeds of different kinds never meet. */
const SEEDS_A_KIND = 100_000;

/** @param past only nurseries of so many past batches; all when null */
export function nurseryJobs(nurseriesAKind: number, past: number | null): readonly NurseryJob[] {
  return KINDS.flatMap(({ pastBatches }, kind) =>
    past !== null && past !== pastBatches
      ? []
      : Array.from({ length: nurseriesAKind }, (_, number) => ({ kind, number })),
  );
}

/** Scores one nursery, at all levels and all its as-of days. */
export function scoreJob({ kind, number }: NurseryJob): NurseryScore {
  const { history, asOfDays } = nurseryOf({ kind, number });
  return scoreNursery(history, { asOfDays, levels: LEVELS, rangesOf: RANGES_OF });
}

export function nurseryOf({ kind, number }: NurseryJob): CheckedNursery {
  const invented = KINDS[kind];
  if (invented === undefined) throw new Error(`no kind of nursery has place ${kind}`);
  return checkedNursery(invented, seedOf({ kind, number }));
}

function seedOf({ kind, number }: NurseryJob): number {
  return kind * SEEDS_A_KIND + number;
}
