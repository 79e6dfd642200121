import { type CivilDay, isoWeekday } from "../dates";
import { type BatchState, type Projection, startOfForecast } from "../projection";

const DAYS_A_WEEK = 7;

/** Plants of a batch in its place, week by week. */
export interface Standing {
  /** First week in which they stand, counted from the as-of day's week as 0. */
  readonly firstWeek: number;
  /** Plants in each week from then on. */
  readonly plants: readonly number[];
  /** Whether it is known when they leave; else they are given for one week alone. */
  readonly leaves: boolean;
}

/**
 * How many plants of an open batch stand in each week: those at the start of the week (in the first
 * week, on the as-of day). After the likely day of each counted step they are as many as are likely
 * to pass it, by the same learned shares as in BATCH_STAGES. The week of the likely ready day is
 * the last. Plants that are ready already, and those without any day to reckon from, are given for
 * the as-of week alone: when they leave is not known.
 *
 * @returns null when the plants were never counted
 */
export function standingWeeks(state: BatchState, projection: Projection): Standing | null {
  const start = startOfForecast(state);
  if (start === null) return null;
  const { method, asOf, plannedOn } = state;
  const planned = state.plants === null ? (plannedOn[start.at] ?? null) : null;
  const firstDay = planned ?? asOf;
  const readyDay =
    state.reached >= method.ready ? null : projection.days.range(state, method.ready)?.likely;
  if (readyDay === null || readyDay === undefined) {
    return { firstWeek: weekFrom(asOf, firstDay), plants: [start.plants], leaves: false };
  }
  const firstWeek = weekFrom(asOf, firstDay);
  const lastWeek = Math.max(firstWeek, weekFrom(asOf, readyDay));
  const losses = countsToCome(state, start.at, projection);
  const plants: number[] = [];
  let standing = start.plants;
  let next = 0;
  for (let week = firstWeek; week <= lastWeek; week += 1) {
    const opens = week === firstWeek ? firstDay : mondayAfter(asOf, week);
    for (; next < losses.length && (losses[next] as Loss).day < opens; next += 1) {
      standing = Math.min(standing, (losses[next] as Loss).plants);
    }
    plants.push(standing);
  }
  return { firstWeek, plants, leaves: true };
}

/** The Monday of the week so many weeks after the as-of day's week. */
export function mondayAfter(asOf: CivilDay, weeks: number): CivilDay {
  return (asOf + 1 - isoWeekday(asOf) + weeks * DAYS_A_WEEK) as CivilDay;
}

function weekFrom(asOf: CivilDay, day: CivilDay): number {
  return Math.max(0, Math.floor((day - mondayAfter(asOf, 0)) / DAYS_A_WEEK));
}

interface Loss {
  readonly day: CivilDay;
  readonly plants: number;
}

/** Counted steps to come before ready, by their likely days, with the plants likely to pass each. */
function countsToCome(state: BatchState, after: number, projection: Projection): Loss[] {
  const losses: Loss[] = [];
  for (let step = after + 1; step < state.method.ready; step += 1) {
    if (!state.method.steps[step]?.counted) continue;
    const day = projection.days.range(state, step)?.likely;
    const plants = projection.plants(state, step)?.likely;
    if (day !== undefined && plants !== undefined) losses.push({ day, plants });
  }
  return losses.sort((a, b) => a.day - b.day);
}
