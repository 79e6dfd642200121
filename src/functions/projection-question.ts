import { type Door, levelArgument } from "../door/index";
import type { RawArguments } from "./entry";

const USUAL_LEVEL = 0.8;

/** Reads the arguments (records, timetable, asOf, level, columns) that projections share. */
export function projectionQuestion(
  door: Door,
  [records, timetable, asOf, level, columns]: RawArguments,
) {
  const day = door.day("asOf", asOf);
  const steps = door.timetable(timetable);
  return {
    asOf: day,
    timetable: steps,
    level: levelArgument("level", door.cell(level), USUAL_LEVEL),
    records: door.records(records, { timetable: steps, asOf: day, columns }),
  };
}
