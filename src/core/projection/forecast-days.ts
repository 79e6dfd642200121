import { type CivilDay, daysLater } from "../dates";
import { madeOnce } from "../made-once";
import {
  type DayDistribution,
  longerThan,
  meanDay,
  nearestEnds,
  onlyDays,
  pointAt,
  type StepLength,
  sum,
} from "../statistics";
import type { Method, Step } from "../timetable";
import type { BatchState } from "./batch-state";
import type { Forecaster } from "./forecaster";

/** A range of days in plain words: from, likely, by. */
export interface DayRange {
  readonly from: CivilDay;
  readonly likely: CivilDay;
  readonly by: CivilDay;
}

/** What is expected of the day of a step. */
export interface DayForecaster {
  /** Null when no step on its line of After has a day. */
  range(state: BatchState, step: number): DayRange | null;
  /** Chances of days, as civil days; null likewise. */
  distribution(state: BatchState, step: number): DayDistribution | null;
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
): DayForecaster {
  const side = (1 - level) / 2;
  const known = new Map<string, Waited>();
  const names = new Map<Method, number>();
  const ask = (state: BatchState, step: number): { from: CivilDay; waited: Waited } | null => {
    const line = directLine(state, step, forecaster) ?? lineTo(state, step);
    if (line === null) return null;
    const { anchorDay, steps, passed } = line;
    const days = asOf - anchorDay;
    // Batches of one method that wait equally long on the same line share one forecast.
    const key = `${numberOf(state.method, names)} ${step} ${line.direct ?? steps.length} ${passed} ${days} ${line.direct !== null}`;
    let waited = known.get(key);
    if (waited === undefined) {
      const distribution =
        line.direct !== null
          ? directDays(state, { after: line.direct, step, anchorDay, waited: days, forecaster })
          : steps.length === 0
            ? pointAt(0)
            : daysAlong(state, { steps, anchorDay, waited: days, forecaster });
      const { low, middle, high } = nearestEnds(distribution.mass, side);
      const { first } = distribution;
      waited = { distribution, range: [first + low, first + middle, first + high] };
      known.set(key, waited);
    }
    return { from: anchorDay, waited };
  };
  return {
    range: (state, step) => {
      const asked = ask(state, step);
      if (asked === null) return null;
      const [from, likely, by] = asked.waited.range;
      return {
        from: daysLater(asked.from, from),
        likely: daysLater(asked.from, likely),
        by: daysLater(asked.from, by),
      };
    },
    distribution: (state, step) => {
      const asked = ask(state, step);
      if (asked === null) return null;
      const { first, mass } = asked.waited.distribution;
      return { first: asked.from + first, mass };
    },
  };
}

/** A forecast in days from the anchor. */
interface Waited {
  readonly distribution: DayDistribution;
  readonly range: readonly [from: number, likely: number, by: number];
}

interface Line {
  /** The step that the days are counted from straight away, past the steps between; null else. */
  readonly direct: number | null;
  /** Day of the last step on the line that is recorded or planned. */
  readonly anchorDay: CivilDay;
  /** Steps after it, down to the one asked for. */
  readonly steps: readonly number[];
  /** How many of them are past without a record. */
  readonly passed: number;
}

/** The line of After from the nearest dated step down to a step; null when no step on it is dated. */
function lineTo(state: BatchState, step: number): Line | null {
  const steps: number[] = [];
  let passed = 0;
  let at: number | null = step;
  while (at !== null) {
    const anchorDay = state.doneOn[at] ?? state.plannedOn[at] ?? null;
    if (anchorDay !== null) return { direct: null, anchorDay, steps, passed };
    steps.unshift(at);
    if (at <= state.reached) passed += 1;
    at = state.method.steps[at]?.after ?? null;
  }
  return null;
}

/**
 * Straight from the step done last, where the nursery has seen enough batches go that way: what
 * happened late in a batch tells more than what happened at the start of its line.
 */
function directLine(state: BatchState, step: number, forecaster: Forecaster): Line | null {
  const { lastDone, method } = state;
  if (lastDone === null || step <= state.reached || !state.recordable[step]) return null;
  if ((state.plannedOn[step] ?? null) !== null) return null;
  const anchorDay = state.doneOn[lastDone] as CivilDay;
  if (forecaster.straight({ method, after: lastDone, upTo: step, from: null }) === null)
    return null;
  return { direct: lastDone, anchorDay, steps: [step], passed: 0 };
}

function directDays(
  { method }: BatchState,
  {
    after,
    step,
    anchorDay,
    waited,
    forecaster,
  }: {
    readonly after: number;
    readonly step: number;
    readonly anchorDay: CivilDay;
    readonly waited: number;
    readonly forecaster: Forecaster;
  },
): DayDistribution {
  const way = { method, after, upTo: step, from: anchorDay };
  const length = forecaster.straight(way) as StepLength;
  return longerThan(length, waited);
}

/** Days from the anchor to the last step of a line. */
function daysAlong(
  { method, reached, recordable }: BatchState,
  {
    steps,
    anchorDay,
    waited,
    forecaster,
  }: {
    readonly steps: readonly number[];
    readonly anchorDay: CivilDay;
    readonly waited: number;
    readonly forecaster: Forecaster;
  },
): DayDistribution {
  let days: DayDistribution | null = null;
  for (const step of steps) {
    const from = daysLater(anchorDay, days === null ? 0 : Math.round(meanDay(days)));
    const length = forecaster.length(method, method.steps[step] as Step, from);
    const unheld: DayDistribution = days === null ? length : sum(days, length);
    if (step <= reached) {
      days = onlyDays(unheld, 0, waited) ?? { first: waited, mass: Float64Array.of(1) };
    } else if (!recordable[step]) {
      days = unheld;
    } else {
      days = onlyDays(unheld, waited + 1, Number.POSITIVE_INFINITY) ?? longerThan(length, waited);
    }
  }
  return days as DayDistribution;
}

function numberOf(method: Method, names: Map<Method, number>): number {
  return madeOnce(names, method, () => names.size);
}
