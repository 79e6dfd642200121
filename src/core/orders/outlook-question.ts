import type { CivilDay } from "../dates";
import type { Records } from "../records";
import type { Timetable } from "../timetable";
import type { Orders } from "./order";

export interface OutlookQuestion {
  readonly orders: Orders;
  readonly records: Records;
  readonly timetable: Timetable;
  readonly asOf: CivilDay;
  /** Strictly between 0 and 1. */
  readonly assurance: number;
}
