import { type CivilDay, type Records, type Timetable } from "../../core";
import type { NurseryState } from "./records-on-day";
/** A nursery's table as the functions read it, with the built-in timetable. */
export declare function nurseryAsRead({ grid, asOf }: NurseryState): {
  readonly records: Records;
  readonly timetable: Timetable;
  readonly asOf: CivilDay;
};
