import type { Cell } from "../../core";
import type { BatchCourse } from "./batch-course";
import type { RecordHabits } from "./record-habits";
/** One writing of one cell. A cell may be written over later: the latest writing shows. */
export interface Entry {
  readonly column: string;
  readonly value: Cell;
  /** Civil day on which it is typed in; before that day the cell does not hold it. */
  readonly typedOn: number;
}
/** Everything that is ever written about a batch, and when. */
export declare function recording(
  course: BatchCourse,
  habits: RecordHabits,
  nurserySeed: number,
): readonly Entry[];
export declare function batchName(number: number): string;
