import {
  builtInTimetable,
  type CivilDay,
  type Records,
  readRecords,
  type Timetable,
} from "../../core";
import type { NurseryState } from "./records-on-day";

const timetable = builtInTimetable();
const stepNames = timetable.methods.flatMap(({ steps }) => steps.map(({ name }) => name));

/** A nursery's table as the functions read it, with the built-in timetable. */
export function nurseryAsRead({ grid, asOf }: NurseryState): {
  readonly records: Records;
  readonly timetable: Timetable;
  readonly asOf: CivilDay;
} {
  const today = asOf as CivilDay;
  const records = readRecords(grid, {
    stepNames,
    asOf: today,
    localeOrder: null,
    decimalMark: null,
    told: new Map(),
  });
  return { records, timetable, asOf: today };
}
