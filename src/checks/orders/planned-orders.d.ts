import { type CheckedDay } from "./checked-days";
/** How orders fared that were planned, and raised as planned. */
export interface PlannedTally {
  readonly orders: number;
  readonly met: number;
  readonly enough: number;
  readonly inTime: number;
  /** Batches lost to a mishap, or emptied. */
  readonly lost: number;
}
/**
 * Plans orders in an invented nursery by what its records teach, sows as many seeds as planned on the
 * day planned, and sees what becomes of them.
 */
export declare function plannedOrders(days: readonly CheckedDay[]): PlannedTally;
