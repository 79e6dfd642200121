import { type Projection, project } from "../../core/projection/project";
import { nurseryAsRead } from "../calibration/nursery-as-read";
import type { NurseryHistory } from "../calibration/nursery-history";
import { type NurseryJob, nurseryOf } from "../calibration/nursery-jobs";
import { type NurseryState, recordsOnDay } from "../calibration/records-on-day";
import type { CheckedNursery } from "../calibration/settings";

export const ASSURANCE = 0.8;

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
export function checkedDays(job: NurseryJob): readonly CheckedDay[] {
  return daysOf(nurseryOf(job));
}

export function daysOf({ history, asOfDays }: CheckedNursery): readonly CheckedDay[] {
  return asOfDays.map((asOf, day) => {
    const state = recordsOnDay(history, asOf);
    const nursery = nurseryAsRead(state);
    return { history, day, state, nursery, projection: project({ ...nursery, level: ASSURANCE }) };
  });
}
