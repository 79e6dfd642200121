import { type NurseryScore } from "./score-nursery";
import { type CheckedNursery } from "./settings";
/** One nursery to be scored: its kind's place in KINDS, and its number within the kind. */
export interface NurseryJob {
  readonly kind: number;
  readonly number: number;
}
/** @param past only nurseries of so many past batches; all when null */
export declare function nurseryJobs(
  nurseriesAKind: number,
  past: number | null,
): readonly NurseryJob[];
/** Scores one nursery, at all levels and all its as-of days. */
export declare function scoreJob({ kind, number }: NurseryJob): NurseryScore;
export declare function nurseryOf({ kind, number }: NurseryJob): CheckedNursery;
