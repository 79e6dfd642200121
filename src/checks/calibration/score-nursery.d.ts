import type { NurseryHistory } from "./nursery-history";
import { type RangesOf, type Who } from "./ranges";
import { type Stage } from "./records-on-day";
export type Quantity = "days" | "plants";
export declare const QUANTITIES: readonly Quantity[];
/** Sums over the ranges of one nursery that are alike in level, who, quantity and stage. */
export interface Sums {
  /** Batches of which a range could be asked. */
  asked: number;
  /** Ranges given, and of these held, too early a truth, too late (or many) a truth. */
  given: number;
  held: number;
  below: number;
  above: number;
  /** Days; or plants for each 100 standing. */
  width: number;
  /** Interval score: width, and for a miss 2 ÷ (1 - level) times how far it missed. */
  score: number;
  /** The same of our ranges, over the batches of which this rival gave one too. */
  oursGiven: number;
  oursHeld: number;
  oursWidth: number;
}
/** One nursery's sums by sumsKey, and what could not be scored. */
export interface NurseryScore {
  readonly sums: ReadonlyMap<string, Sums>;
  /** Open rows that truly ended before the as-of day, of which no word ever comes. */
  readonly forgotten: number;
  /** Of those, rows to which ours gives a ready day at the first level. */
  readonly forgottenGiven: number;
}
export declare function sumsKey({
  level,
  who,
  quantity,
  stage,
}: {
  readonly level: number;
  readonly who: Who;
  readonly quantity: Quantity;
  readonly stage: Stage | "all";
}): string;
/**
 * Holds the ranges given for a nursery's open batches on some days against what came true.
 *
 * A batch is asked about when its row is neither closed nor on record as ready or empty, and it is
 * truly not settled yet, or is settled and the word of it only comes later. A lost batch has no
 * ready day, and 0 ready plants.
 *
 * Method: the interval score of Gneiting, T., Raftery, A. E. (2007). Strictly proper scoring rules,
 *   prediction, and estimation. J. Amer. Statist. Assoc. 102, 359-378, section 6.2 (from memory).
 */
export declare function scoreNursery(
  history: NurseryHistory,
  {
    asOfDays,
    levels,
    rangesOf,
  }: {
    readonly asOfDays: readonly number[];
    readonly levels: readonly number[];
    readonly rangesOf: Readonly<Record<Who, RangesOf>>;
  },
): NurseryScore;
