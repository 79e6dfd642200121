import { type NurseryTruth } from "./nursery-truth";
/** What truly happens to a batch, whether or not anybody writes it down. */
export interface BatchCourse {
  readonly number: number;
  readonly variety: string;
  readonly grafter: string;
  /** Civil day on which each step is seen to be done, by place in STEPS; null when it never is. */
  readonly days: readonly (number | null)[];
  /** Plants at each counted step; null at the others, and after a batch is lost. */
  readonly plants: readonly (number | null)[];
  /** The counted step that no plant passed; null for a batch that reaches ready. */
  readonly lostAt: number | null;
  /** Day on which the batch is seen to be ready; null when it is lost. */
  readonly readyDay: number | null;
  /** 0 when it is lost. */
  readonly readyPlants: number;
  /** Day on which it is settled what becomes of the batch: ready, or lost. */
  readonly settledOn: number;
}
/**
 * Runs one batch of a nursery from its sowing to its end.
 *
 * @param seeds sown; as many as the nursery happens to sow, if left out
 */
export declare function batchCourse(
  truth: NurseryTruth,
  {
    number,
    sownOn,
    seeds,
  }: {
    readonly number: number;
    readonly sownOn: number;
    readonly seeds?: number | null;
  },
): BatchCourse;
