import type { CivilDay } from "../dates/civil-day";
import type { Batch } from "../records/batch";
import type { Records } from "../records/records";
import type { Method } from "../timetable/timetable";

/** Where a batch stands on a day, by what was recorded up to that day. Steps go by place in the method. */
export interface BatchState {
  readonly batch: Batch;
  readonly method: Method;
  readonly asOf: CivilDay;
  /** Whether the table has a column for the step; without one nobody can know that it is not done. */
  readonly recordable: readonly boolean[];
  /** Days done, up to the as-of day. */
  readonly doneOn: readonly (CivilDay | null)[];
  /** Days written down that lie after the as-of day: what is planned. */
  readonly plannedOn: readonly (CivilDay | null)[];
  readonly counts: readonly (number | null)[];
  /** Latest step in the method's order that has a day or a count; -1 when none. Steps up to it are past. */
  readonly reached: number;
  /** Step with the latest day; null when no day is recorded. */
  readonly lastDone: number | null;
  /** Latest counted step with a count; null when none. */
  readonly lastCounted: number | null;
  /** Plants standing; null when never counted. */
  readonly plants: number | null;
  /** Not closed, and not known to be empty. */
  readonly open: boolean;
}

/** Finds where batches stand; made once for a table, since the places of its columns are the same for all. */
export function stateFinder(
  records: Records,
  asOf: CivilDay,
): (batch: Batch, method: Method) => BatchState {
  const placesOf = new Map<Method, readonly number[]>();
  return (batch, method) => {
    let places = placesOf.get(method);
    if (places === undefined) {
      places = method.steps.map((step) => records.stepKeys.indexOf(step.key));
      placesOf.set(method, places);
    }
    return stateOf(batch, method, places, asOf);
  };
}

function stateOf(
  batch: Batch,
  method: Method,
  places: readonly number[],
  asOf: CivilDay,
): BatchState {
  const doneOn: (CivilDay | null)[] = [];
  const plannedOn: (CivilDay | null)[] = [];
  const counts: (number | null)[] = [];
  let reached = -1;
  let lastDone: number | null = null;
  let lastCounted: number | null = null;
  for (let step = 0; step < places.length; step += 1) {
    const place = places[step] as number;
    const day = place === -1 ? null : (batch.days[place] ?? null);
    const planned = day !== null && day > asOf;
    const done = planned ? null : day;
    const count = planned || place === -1 ? null : (batch.counts[place] ?? null);
    doneOn.push(done);
    plannedOn.push(planned ? day : null);
    counts.push(count);
    if (done !== null || count !== null) reached = step;
    if (done !== null && (lastDone === null || done >= (doneOn[lastDone] as number)))
      lastDone = step;
    if (count !== null && method.steps[step]?.counted) lastCounted = step;
  }
  const plants = plantsStanding(batch, counts, lastCounted);
  return {
    batch,
    method,
    asOf,
    recordable: places.map((place) => place !== -1),
    doneOn,
    plannedOn,
    counts,
    reached,
    lastDone,
    lastCounted,
    plants,
    open: !batch.closed && plants !== 0,
  };
}

/**
 * The plants of the last count less those dispatched since, and never more than what the first
 * count leaves after all that were culled and dispatched.
 */
function plantsStanding(
  batch: Batch,
  counts: readonly (number | null)[],
  lastCounted: number | null,
): number | null {
  if (lastCounted === null) return null;
  const last = counts[lastCounted] as number;
  const first = counts.find((count) => count !== null) as number;
  const dispatched = batch.dispatched ?? 0;
  const left = first - (batch.culled ?? 0) - dispatched;
  return Math.max(0, Math.min(last - dispatched, left));
}
