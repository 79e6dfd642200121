import type { CleanTable } from "./clean-sheet";
import { type Combination } from "./combination";
import { type Difference } from "./differences";
/** How often a habit was used, and what became of its sheets. */
export interface HabitTally {
  readonly habit: string;
  readonly used: number;
  readonly identical: number;
  readonly silent: number;
}
export interface HabitCheck {
  readonly combinations: number;
  /** Sheets that were read as the clean ones. */
  readonly identical: number;
  /** Sheets of which BATCH_CHECK tells every difference. */
  readonly listed: number;
  /** Seeds of the sheets in which something was read otherwise without a word. */
  readonly silent: readonly number[];
  /** By habit, the ones that fare worst first. */
  readonly habits: readonly HabitTally[];
  /** Differences that BATCH_CHECK tells, by its sentence, most first. */
  readonly told: readonly ToldDifference[];
}
export interface ToldDifference {
  /** The trouble's sentence, with dots in place of names and numbers. */
  readonly trouble: string;
  readonly sheets: number;
  /** The seed of one of them. */
  readonly seed: number;
}
/** Puts combinations of habits upon the clean sample and holds the readings against each other. */
export declare function checkHabits(
  table: CleanTable,
  {
    from,
    combinations,
  }: {
    readonly from: number;
    readonly combinations: number;
  },
): HabitCheck;
export declare function differencesOf(drawn: Combination, table: CleanTable): Difference[];
/** The sentences that tell of differences, with dots in place of names and numbers. */
export declare function troublesOf(found: readonly Difference[]): ReadonlySet<string>;
