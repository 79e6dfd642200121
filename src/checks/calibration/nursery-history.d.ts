import { type BatchCourse } from "./batch-course";
import { type NurseryKind, type NurseryTruth } from "./nursery-truth";
import { type RecordHabits } from "./record-habits";
import { type Entry } from "./recording";
export interface SimulatedBatch {
  readonly name: string;
  readonly course: BatchCourse;
  readonly entries: readonly Entry[];
  /** Day on which its being ready is on record; null when it never is. */
  readonly readyTypedOn: number | null;
  /** Day from which the table tells what became of it: ready, none left, or a lost row closed. */
  readonly outcomeTypedOn: number | null;
}
/** An invented nursery, from its first sowing to the last that is needed. */
export interface NurseryHistory {
  readonly truth: NurseryTruth;
  readonly habits: RecordHabits;
  readonly batches: readonly SimulatedBatch[];
  /** Days on which a batch was first on record as ready, rising. */
  readonly finishedOn: readonly number[];
  /** The last sowing: what is asked of a later day would lack sowings. */
  readonly lastSowing: number;
}
/**
 * Invents a nursery and runs it until so many batches are on record as ready. Running it longer
 * only adds to it: every batch has draws of its own.
 */
export declare function nurseryHistory(
  kind: NurseryKind,
  seed: number,
  finishedWanted: number,
): NurseryHistory;
