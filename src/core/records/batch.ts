import type { CivilDay } from "../dates/civil-day";

/** Plants raised together, as one row of the records tells it. Text that was not given is empty. */
export interface Batch {
  /** Row in the range, from 1. */
  readonly row: number;
  readonly name: string;
  readonly fromLot: string;
  readonly variety: string;
  readonly rootstock: string;
  readonly method: string;
  readonly place: string;
  readonly grafter: string;
  readonly scionSource: string;
  readonly culled: number | null;
  readonly dispatched: number | null;
  readonly closed: boolean;
  /** Day of each step, in the order of the records' stepKeys; null where not recorded. */
  readonly days: readonly (CivilDay | null)[];
  /** Plants counted at each step, in the same order; null where not counted, which is not 0. */
  readonly counts: readonly (number | null)[];
}
