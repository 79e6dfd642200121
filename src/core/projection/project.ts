import type { CivilDay } from "../dates";
import type { Batch, Records } from "../records";
import { methodFinder, type Timetable } from "../timetable";
import { type BatchState, stateFinder } from "./batch-state";
import { type DayForecaster, dayForecaster } from "./forecast-days";
import { type PlantRange, plantForecaster } from "./forecast-plants";
import type { Forecaster } from "./forecaster";
import { learn } from "./learn";

export interface ProjectionQuestion {
  readonly records: Records;
  readonly timetable: Timetable;
  readonly asOf: CivilDay;
  /** How many of 100 ranges should hold, as a share strictly between 0 and 1. */
  readonly level: number;
}

/** For answers that show no ranges: what is likely is the same at every level. */
export const ANY_LEVEL = 0.8;

/** Every batch with where it stands, and the forecasts that can be asked of it. */
export interface Projection {
  /** In the order of the records; state is null where the timetable lacks the batch's method. */
  readonly batches: readonly { readonly batch: Batch; readonly state: BatchState | null }[];
  readonly forecaster: Forecaster;
  readonly days: DayForecaster;
  plants(state: BatchState, step: number): PlantRange | null;
}

/** @param believing what is believed of batches to come; what the records teach, if left out */
export function project(
  { records, timetable, asOf, level }: ProjectionQuestion,
  believing?: Forecaster,
): Projection {
  const methodOf = methodFinder(timetable);
  const findState = stateFinder(records, asOf);
  const batches = records.batches.map((batch) => {
    const method = methodOf(batch);
    return { batch, state: method === null ? null : findState(batch, method) };
  });
  const forecaster =
    believing ?? learn(batches.flatMap(({ state }) => (state === null ? [] : [state])));
  return {
    batches,
    forecaster,
    days: dayForecaster(forecaster, asOf, level),
    plants: plantForecaster(forecaster, level),
  };
}
