import { type CleanTable } from "./clean-sheet";
import { type Sheet } from "./sheet";
/** A messy sheet that can be made again: some batches, and the habits put upon them. */
export interface Combination {
  readonly seed: number;
  readonly batches: number;
  readonly habits: readonly string[];
}
/** Draws a combination. @param seed the same seed draws the same */
export declare function combination(seed: number): Combination;
/** The sheet of a combination, clean and with its habits. */
export declare function sheetsFor(
  { seed, batches, habits }: Combination,
  table: CleanTable,
): {
  readonly clean: Sheet;
  readonly messy: Sheet;
};
