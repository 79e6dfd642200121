import { type CivilDay, daysLater } from "../dates";
import { type BatchState, type TaskWindow, taskWindow } from "../projection";
import type { Step } from "../timetable";

/** Work that comes before a step, with its days. */
export interface WorkAhead {
  readonly step: Step;
  readonly window: TaskWindow;
}

/** Where the days of a step stand in the records; see stepIndex. */
export type RecordedAt = (key: string) => number | null;

/**
 * What has to be done ahead of steps that are still to come, such as shoots to be defoliated before they are
 * cut. Its days are counted back from the day for which the step is planned, else from its usual day.
 *
 * Where the nursery records such work and has not yet, the step can come no sooner than that many days from
 * now: it is due, and late only before a day that somebody has planned.
 */
export function workAhead(state: BatchState, recordedAt: RecordedAt): readonly WorkAhead[] {
  const { batch, method, asOf, reached, plannedOn } = state;
  return method.ahead.flatMap((step): WorkAhead[] => {
    const before = step.after;
    if (before === null || before <= reached || batch.notDone.includes(step.key)) return [];
    const at = recordedAt(step.key);
    if (at !== null && (batch.days[at] ?? null) !== null) return [];
    const usual = taskWindow(state, before)?.usual ?? null;
    if (usual === null) return [];
    const isPlanned = (plannedOn[before] ?? null) !== null;
    const start = isPlanned || at === null ? usual : (Math.max(usual, asOf - step.by) as CivilDay);
    const window = {
      from: daysLater(start, step.from),
      usual: daysLater(start, step.usual),
      by: daysLater(start, step.by),
    };
    return [{ step, window }];
  });
}
