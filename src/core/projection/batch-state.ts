import type { CivilDay } from "../dates";
import { madeOnce } from "../made-once";
import type { Batch, Records } from "../records";
import type { Method } from "../timetable";

/** Where a batch stands on a day, by what was recorded up to that day. Steps go by index in the method. */
export interface BatchState {
  readonly batch: Batch;
  readonly method: Method;
  readonly asOf: CivilDay;
  /**
   * Whether the table has a column for the step; without one nobody can know that it is not done. Not where
   * it is said that the step is not to be done.
   */
  readonly recordable: readonly boolean[];
  /** Steps that are said not to be done, and were not. */
  readonly skipped: readonly boolean[];
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
  /** Plants written down for a day to come, where none stand yet, and the step they are planned at. */
  readonly planned: { readonly plants: number; readonly at: number } | null;
  /** Not closed, and not known to be empty. */
  readonly open: boolean;
}

/** Finds where batches stand; made once for a table, since the indexes of its columns are the same for all. */
export function stateFinder(
  records: Records,
  asOf: CivilDay,
): (batch: Batch, method: Method) => BatchState {
  const columnsOf = new Map<Method, ForBatches>();
  return (batch, method) => {
    const columns = madeOnce(columnsOf, method, () => {
      const stepIndexes = method.steps.map((step) => records.stepKeys.indexOf(step.key));
      return { stepIndexes, recordable: stepIndexes.map((index) => index !== -1), asOf };
    });
    return stateOf(batch, method, columns);
  };
}

const NONE: readonly boolean[] = [];

/** What is the same for all batches of a method. */
interface ForBatches extends Pick<BatchState, "recordable" | "asOf"> {
  readonly stepIndexes: readonly number[];
}

function stateOf(
  batch: Batch,
  method: Method,
  { stepIndexes, recordable, asOf }: ForBatches,
): BatchState {
  const doneOn: (CivilDay | null)[] = [];
  const plannedOn: (CivilDay | null)[] = [];
  const counts: (number | null)[] = [];
  let reached = -1;
  let lastDone: number | null = null;
  let lastCounted: number | null = null;
  let planned: BatchState["planned"] = null;
  for (let step = 0; step < stepIndexes.length; step += 1) {
    const index = stepIndexes[step] as number;
    const day = index === -1 ? null : (batch.days[index] ?? null);
    const toCome = day !== null && day > asOf;
    const done = toCome ? null : day;
    const written = index === -1 ? null : (batch.counts[index] ?? null);
    const count = toCome ? null : written;
    if (toCome && written !== null) planned ??= { plants: written, at: step };
    doneOn.push(done);
    plannedOn.push(toCome ? day : null);
    counts.push(count);
    if (done !== null || count !== null) reached = step;
    if (done !== null && (lastDone === null || done >= (doneOn[lastDone] as number)))
      lastDone = step;
    if (count !== null && method.steps[step]?.counted) lastCounted = step;
  }
  const plants = plantsStanding(batch, counts, lastCounted);
  const skipped =
    batch.notDone.length === 0
      ? NONE
      : method.steps.map(({ key }, step) => doneOn[step] === null && batch.notDone.includes(key));
  return {
    batch,
    method,
    asOf,
    recordable:
      batch.notDone.length === 0
        ? recordable
        : recordable.map((can, step) => can && skipped[step] !== true),
    skipped,
    doneOn,
    plannedOn,
    counts,
    reached,
    lastDone,
    lastCounted,
    plants,
    planned: plants === null ? planned : null,
    open: !batch.closed && plants !== 0,
  };
}

/**
 * The plants of the last count less those that left since, and never more than what the first
 * count leaves after all that were culled, given to other batches and dispatched.
 */
function plantsStanding(
  batch: Batch,
  counts: readonly (number | null)[],
  lastCounted: number | null,
): number | null {
  const came = batch.fromLot === "" ? null : batch.received;
  const started = came ?? counts.find((count) => count !== null) ?? null;
  if (started === null) return null;
  const dispatched = batch.dispatched ?? 0;
  const left = started - (batch.culled ?? 0) - batch.given - dispatched;
  if (lastCounted === null) return Math.max(0, left);
  const last = counts[lastCounted] as number;
  const since = dispatched + batch.given - batch.givenBeforeCount + (batch.culledSinceCount ?? 0);
  return Math.max(0, Math.min(last - since, left));
}

/** The plants that a forecast starts from, and the step at which they stand or are planned; null when unknown. */
export function startOfForecast(
  state: BatchState,
): { readonly plants: number; readonly at: number } | null {
  if (state.plants === null) return state.planned;
  // Plants that came from a lot by a line of their own stand where the batch stands.
  return { plants: state.plants, at: state.lastCounted ?? state.reached };
}
