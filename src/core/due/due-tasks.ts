import type { Kinds } from "../answer";
import type { CivilDay } from "../dates";
import { type BatchState, stateFinder, taskWindow } from "../projection";
import type { Records } from "../records";
import { methodFinder, type Step, type Timetable } from "../timetable";

export const DUE_COLUMNS = {
  doOn: "day",
  task: "text",
  batch: "text",
  place: "text",
  plants: "count",
  from: "day",
  by: "day",
  status: "text",
  daysLate: "count",
  hours: "hours",
  caution: "text",
} as const satisfies Kinds;

/** How a task stands on the as-of day: past its window, within it, or before it. */
export type DueStatus = "late" | "due" | "coming";

export interface DueQuestion {
  readonly records: Records;
  readonly timetable: Timetable;
  readonly asOf: CivilDay;
  /** How far to look ahead, whole days, 0 or more. */
  readonly daysAhead: number;
}

/** A step of a batch that has to be done. */
export interface Task {
  readonly batch: string;
  readonly place: string;
  readonly step: Step;
  /** Plants standing, else those planned at this step or one before; null when not known. */
  readonly plants: number | null;
  /** The usual day, or the as-of day once that is past. */
  readonly doOn: CivilDay;
  readonly from: CivilDay;
  readonly by: CivilDay;
  readonly status: DueStatus;
  readonly daysLate: number;
  /** Null when the plants or the work rate are not known. */
  readonly hours: number | null;
}

/** What is to be done, soonest first; late before due before coming on one day. */
export function dueTasks({ records, timetable, asOf, daysAhead }: DueQuestion): readonly Task[] {
  const methodOf = methodFinder(timetable);
  const findState = stateFinder(records, asOf);
  const tasks: Task[] = [];
  for (const batch of records.batches) {
    const method = methodOf(batch);
    if (method === null || batch.closed) continue;
    const state = findState(batch, method);
    if (!state.open) continue;
    for (let index = state.reached + 1; index < method.steps.length; index += 1) {
      const window = taskWindow(state, index);
      if (window === null || window.from > asOf + daysAhead) continue;
      const step = method.steps[index] as Step;
      const { from, usual, by } = window;
      // A step that can't be recorded is a reminder in its time; nobody could ever tick it off.
      if (!state.recordable[index] && by < asOf) continue;
      const plants = state.plants ?? plannedBy(state, index);
      const status = by < asOf ? "late" : from <= asOf ? "due" : "coming";
      tasks.push({
        batch: batch.name,
        place: batch.place,
        step,
        plants,
        doOn: usual < asOf ? asOf : usual,
        from,
        by,
        status,
        daysLate: status === "late" ? asOf - by : 0,
        hours: plants === null || step.perPersonHour === null ? null : plants / step.perPersonHour,
      });
    }
  }
  return tasks.sort(soonestFirst);
}

function plannedBy({ planned }: BatchState, index: number): number | null {
  return planned === null || planned.at > index ? null : planned.plants;
}

const STATUS_ORDER: Readonly<Record<DueStatus, number>> = { late: 0, due: 1, coming: 2 };

function soonestFirst(a: Task, b: Task): number {
  return (
    a.doOn - b.doOn ||
    STATUS_ORDER[a.status] - STATUS_ORDER[b.status] ||
    b.daysLate - a.daysLate ||
    compareText(a.place, b.place) ||
    compareText(a.batch, b.batch)
  );
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
