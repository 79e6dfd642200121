import { type CivilDay, daysLater } from "../dates";
import type { BatchState } from "./batch-state";

/** The days between which a task should be done, by the timetable. */
export interface TaskWindow {
  readonly from: CivilDay;
  readonly usual: CivilDay;
  readonly by: CivilDay;
}

/**
 * The window of a step that is still to come: the timetable's days, counted from the day the step
 * before it was done, or is planned, or should usually be done. A step before it that is still to
 * come can't be done before the as-of day, so nothing is late for want of another step.
 *
 * @returns null when no step on its line of After has a day
 */
export function taskWindow(state: BatchState, index: number): TaskWindow | null {
  const planned = state.plannedOn[index] ?? null;
  if (planned !== null) return { from: planned, usual: planned, by: planned };
  const step = state.method.steps[index];
  if (step === undefined || step.after === null) return null;
  const start = usualDay(state, step.after);
  if (start === null) return null;
  return {
    from: daysLater(start, step.from),
    usual: daysLater(start, step.usual),
    by: daysLater(start, step.by),
  };
}

function usualDay(state: BatchState, index: number): CivilDay | null {
  const known = state.doneOn[index] ?? state.plannedOn[index] ?? null;
  if (known !== null) return known;
  const usual = taskWindow(state, index)?.usual ?? null;
  // Whether a step without a column is still to come nobody can know.
  const stillToCome = index > state.reached && state.recordable[index];
  return usual !== null && stillToCome && usual < state.asOf ? state.asOf : usual;
}
