import { type Grid } from "../../core";
import type { NurseryHistory } from "./nursery-history";
/** What the table tells of one batch on a day, in plain numbers, for the rivals. */
export interface SeenBatch {
  readonly name: string;
  /** By place in STEPS; null where nothing is written. */
  readonly days: readonly (number | null)[];
  readonly counts: readonly (number | null)[];
  readonly closed: boolean;
}
/** A nursery's table as it stands on a day: nothing in it was typed in later. */
export interface NurseryState {
  readonly asOf: number;
  readonly grid: Grid;
  readonly seen: readonly SeenBatch[];
}
/** The table as it stands at the end of a day. A batch has a row once its sowing is typed in. */
export declare function recordsOnDay(
  { batches, habits }: NurseryHistory,
  asOf: number,
): NurseryState;
/** The latest step with a day; of steps on one day the later. null when no day is written. */
export declare function lastStep({ days }: SeenBatch): number | null;
/** The latest counted step with a count; null when none is written. */
export declare function lastCount({ counts }: SeenBatch): number | null;
/** How far a batch has come by its records. */
export type Stage = "sown only" | "grafted" | "takes counted";
export declare const STAGES: readonly Stage[];
export declare function stageOf({ days, counts }: SeenBatch): Stage;
