import type { StatedChance } from "./outlook-chances";
import type { PlannedTally } from "./planned-orders";
/** How one nursery's orders fared. */
export interface OrdersScore {
  /** Its kind's place in KINDS. */
  readonly kind: number;
  readonly planned: PlannedTally;
  readonly chances: readonly StatedChance[];
}
/** Between which shares of planned orders must be met. */
export declare const MET_LIMITS: {
  readonly from: 0.77;
  readonly to: 0.83;
};
/** So far may the share filled lie from the chance stated. */
export declare const CHANCE_LIMIT = 0.05;
/** A tenth with fewer orders tells too little to be judged: its own chance is more than the limit. */
export declare const LEAST_JUDGED = 300;
export interface MetShare {
  readonly orders: number;
  readonly met: number;
  readonly enough: number;
  readonly inTime: number;
  readonly lost: number;
  /** Standard error of met, from how nurseries differ. */
  readonly error: number;
}
/** Shares of all planned orders, 0 to 1. */
export declare function metShare(scores: readonly OrdersScore[]): MetShare;
export interface Tenth {
  /** From a tenth to the next, such as 3 for 0.3 to 0.4. */
  readonly tenth: number;
  readonly orders: number;
  /** Mean of the chances stated, and share of the orders filled. */
  readonly stated: number;
  readonly filled: number;
}
/** The orders by the tenth of the chance that was stated for them. */
export declare function tenths(chances: readonly StatedChance[]): readonly Tenth[];
/**
 * The whole table, and what lies outside its limit.
 *
 * @param errors by how many standard errors a limit may be passed: 0 for a whole check
 */
export declare function ordersTable(
  scores: readonly OrdersScore[],
  errors?: number,
): {
  readonly lines: readonly string[];
  readonly outside: readonly string[];
};
