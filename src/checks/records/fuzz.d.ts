import { type Grid, type ReadingOptions } from "../../core";
export interface FuzzResult {
  readonly grids: number;
  /** Grids that were read as records; the others got a sentence. */
  readonly read: number;
  readonly batches: number;
  /** Each fault with the seed of its grid. */
  readonly faults: readonly string[];
  /** The grid that took longest. */
  readonly slowest: {
    readonly seed: number;
    readonly milliseconds: number;
  };
}
/** Reads random grids; nothing but our own sentences may be thrown, and every row is accounted for. */
export declare function fuzz({ from, grids }: { from: number; grids: number }): FuzzResult;
/** A grid and how it is to be read, the same for the same seed. */
export declare function randomQuestion(seed: number): {
  grid: Grid;
  how: ReadingOptions;
};
