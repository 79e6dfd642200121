import type { CivilDay } from "../dates";
import type { ClosedDays, Person } from "./crew";

/** A task that asks for hands. */
export interface WorkTask {
  /** What a person must be able to do, see jobKind. */
  readonly kind: string;
  readonly from: CivilDay;
  readonly usual: CivilDay;
  /** The last day it may be done on. */
  readonly by: CivilDay;
  /** Hundredths of an hour, a whole number above 0. */
  readonly asked: number;
}

export interface WorkQuestion {
  readonly tasks: readonly WorkTask[];
  readonly crew: readonly Person[];
  readonly closed: ClosedDays;
  /** The days to plan, both within. */
  readonly first: CivilDay;
  readonly last: CivilDay;
}
