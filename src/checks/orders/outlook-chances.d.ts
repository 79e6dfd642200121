import { type CheckedDay } from "./checked-days";
/** A chance that was stated for an order, and whether it came true. */
export interface StatedChance {
  readonly stated: number;
  readonly filled: boolean;
}
/**
 * Asks the outlook of invented orders in an invented nursery, and fills them with what truly becomes
 * of the batches that stand there on that day.
 */
export declare function statedChances(days: readonly CheckedDay[]): readonly StatedChance[];
