import type { CivilDay } from "../dates/civil-day";
import { type DayDistribution, dayQuantile, onlyDays, sum } from "../statistics/day-distribution";
import { longerThan } from "../statistics/step-length";
import type { Method, Step } from "../timetable/timetable";
import type { BatchState } from "./batch-state";
import type { Forecaster } from "./forecaster";

/** A range of days in plain words: from, likely, by. */
export interface DayRange {
  readonly from: CivilDay;
  readonly likely: CivilDay;
  readonly by: CivilDay;
}

/**
 * Forecasts the days of steps still to come.
 *
 * A step's day is the day of the last recorded step before it on its line of After, plus the
 * lengths of the steps between, each independent; a step known to be still waiting on the as-of
 * day lasts longer than that, and a step passed without a record lasted no longer. Of a step that
 * the table has no column for neither is known.
 *
 * @param level how many of 100 ranges should hold, as a share
 */
export function dayForecaster(
  forecaster: Forecaster,
  asOf: CivilDay,
  level: number,
): (state: BatchState, step: number) => DayRange | null {
  const ranges = new Map<string, readonly number[]>();
  const names = new Map<Method, number>();
  return (state, step) => {
    const line = lineTo(state, step);
    if (line === null) return null;
    const { anchorDay, places, passed } = line;
    if (places.length === 0) return { from: anchorDay, likely: anchorDay, by: anchorDay };
    const waited = asOf - anchorDay;
    // Batches of one method that wait equally long on the same line share one forecast.
    const key = `${numberOf(state.method, names)} ${step} ${places.length} ${passed} ${waited}`;
    let range = ranges.get(key);
    if (range === undefined) {
      const distribution = daysAlong(state, places, waited, forecaster);
      const side = (1 - level) / 2;
      range = [side, 0.5, 1 - side].map((chance) => dayQuantile(distribution, chance));
      ranges.set(key, range);
    }
    const [from, likely, by] = range.map((days) => anchorDay + days) as CivilDay[];
    return { from, likely, by } as DayRange;
  };
}

interface Line {
  /** Day of the last step on the line that is recorded or planned. */
  readonly anchorDay: CivilDay;
  /** Steps after it, down to the one asked for. */
  readonly places: readonly number[];
  /** How many of them are past without a record. */
  readonly passed: number;
}

/** The line of After from the nearest dated step down to a step; null when no step on it is dated. */
function lineTo(state: BatchState, step: number): Line | null {
  const places: number[] = [];
  let passed = 0;
  let at: number | null = step;
  while (at !== null) {
    const anchorDay = state.doneOn[at] ?? state.plannedOn[at] ?? null;
    if (anchorDay !== null) return { anchorDay, places, passed };
    places.unshift(at);
    if (at <= state.reached) passed += 1;
    at = state.method.steps[at]?.after ?? null;
  }
  return null;
}

/** Days from the anchor to the last step of a line. */
function daysAlong(
  { method, reached, recordable }: BatchState,
  places: readonly number[],
  waited: number,
  forecaster: Forecaster,
): DayDistribution {
  let days: DayDistribution | null = null;
  for (const place of places) {
    const length = forecaster.length(method, method.steps[place] as Step);
    const unheld: DayDistribution = days === null ? length : sum(days, length);
    if (place <= reached) {
      days = onlyDays(unheld, 0, waited) ?? { first: waited, mass: Float64Array.of(1) };
    } else if (!recordable[place]) {
      days = unheld;
    } else {
      days = onlyDays(unheld, waited + 1, Number.POSITIVE_INFINITY) ?? longerThan(length, waited);
    }
  }
  return days as DayDistribution;
}

function numberOf(method: Method, names: Map<Method, number>): number {
  let number = names.get(method);
  if (number === undefined) {
    number = names.size;
    names.set(method, number);
  }
  return number;
}
