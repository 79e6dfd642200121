import { type Projection } from "../../core/projection/project";
import { nurseryAsRead } from "../calibration/nursery-as-read";
import type { NurseryHistory } from "../calibration/nursery-history";
import { type NurseryJob } from "../calibration/nursery-jobs";
import { type NurseryState } from "../calibration/records-on-day";
export declare const ASSURANCE = 0.8;
/** One day on which an invented nursery is asked about orders. */
export interface CheckedDay {
  readonly history: NurseryHistory;
  /** Number of the day, from 0; what is invented for a day is drawn by it. */
  readonly day: number;
  readonly state: NurseryState;
  readonly nursery: ReturnType<typeof nurseryAsRead>;
  readonly projection: Projection;
}
/** The days of an invented nursery, each with its table as it was read. */
export declare function checkedDays(job: NurseryJob): readonly CheckedDay[];
