import type { Kinds } from "../answer";
import type { CivilDay } from "../dates";
import { madeOnce } from "../made-once";
import {
  ANY_LEVEL,
  type BatchState,
  type Forecaster,
  likelyPlants,
  type PassageAnyDay,
  type Projection,
  project,
  startOfForecast,
  type TaskWindow,
  taskWindow,
} from "../projection";
import { type JobNeverRecorded, type LeftOut, type Records, stepIndex } from "../records";
import { leftOutOfOpen, type Step, type Timetable } from "../timetable";
import { careByPlace } from "./care-by-place";
import { missedJobs } from "./missed-jobs";
import { workAhead } from "./work-ahead";

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
  plantsAre: "text",
} as const satisfies Kinds;

/** How a task stands on the as-of day: past its window, within it, or before it. */
export type DueStatus = "late" | "due" | "coming";

export interface DueQuestion {
  readonly records: Records;
  readonly timetable: Timetable;
  readonly asOf: CivilDay;
  /** How far to look ahead, whole days, 0 or more. */
  readonly daysAhead: number;
  /** Whether looks are left out, and only how many there are is said; they are listed if left out. */
  readonly withoutLooks?: boolean;
}

/** A step of a batch that has to be done. */
export interface Task {
  readonly batch: string;
  /** Empty where none is written. */
  readonly variety: string;
  readonly place: string;
  readonly step: Step;
  /** The name of the batch's method. */
  readonly method: string;
  /** Plants that the work is likely to be done to, see likelyPlants; null when not known. */
  readonly plants: number | null;
  /** Whether nobody counted them so: they are reckoned by what is likely to be lost until then. */
  readonly isEstimate: boolean;
  /** Plants likely to pass the step: what it needs is used on them. */
  readonly passing: number | null;
  /** The way on which the plants likely to pass are reckoned; null where none are known. */
  readonly way: PassageAnyDay | null;
  /** The usual day, or the as-of day once that is past. */
  readonly doOn: CivilDay;
  readonly from: CivilDay;
  readonly by: CivilDay;
  readonly status: DueStatus;
  readonly daysLate: number;
  /** Null when the plants or the work rate are not known. */
  readonly hours: number | null;
}

/** What is to be done, and what is left out of it. */
export interface DueTasks {
  readonly rows: readonly Task[];
  readonly remarks: readonly LeftOut[];
  /** What is believed of batches to come. */
  readonly forecaster: Forecaster;
}

/**
 * What is to be done, jobs and counts before looks, each soonest first; late before due before coming on
 * one day. A job stays due until it is recorded, whatever came later; a look is over with its days.
 *
 * @param believing what is believed of batches to come; what the records teach, if left out
 */
export function dueTasks(question: DueQuestion, believing?: Forecaster): DueTasks {
  const { records, asOf, daysAhead } = question;
  const projection = project({ ...question, level: ANY_LEVEL }, believing);
  const taskIn = taskFinder(projection, daysAhead);
  const taskAt = (state: BatchState, index: number): readonly Task[] => {
    const window = taskWindow(state, index);
    const step = state.method.steps[index];
    if (state.skipped[index] || window === null || step === undefined) return [];
    return taskIn(state, window, { step, at: index, isRecorded: state.recordable[index] ?? false });
  };
  const everRecorded = recordedSteps(records);
  const never = new Map<string, JobNeverRecorded>();
  const tasks: Task[] = [];
  const open: BatchState[] = [];
  const recordedAt = (key: string) => stepIndex(records, key);
  for (const { state } of projection.batches) {
    if (state === null || !state.open) continue;
    const { method } = state;
    open.push(state);
    for (const { step, window } of workAhead(state, recordedAt)) {
      const isRecorded = recordedAt(step.key) !== null && everRecorded(step.key);
      tasks.push(...taskIn(state, window, { step, at: step.after ?? 0, isRecorded }));
    }
    for (const index of missedJobs(state)) {
      const { key, name } = method.steps[index] as Step;
      if (everRecorded(key)) tasks.push(...taskAt(state, index));
      else {
        const batches = (never.get(key)?.batches ?? 0) + 1;
        never.set(key, { code: "job-never-recorded", step: name, batches });
      }
    }
    for (let index = state.reached + 1; index < method.steps.length; index += 1) {
      tasks.push(...taskAt(state, index));
    }
  }
  const shown = question.withoutLooks ? tasks.filter((task) => !isLook(task)) : tasks;
  const looks = tasks.length - shown.length;
  return {
    forecaster: projection.forecaster,
    rows: shown.sort(inTurn),
    remarks: [
      ...leftOutOfOpen(question),
      ...never.values(),
      ...(looks === 0 ? [] : [{ code: "looks-hidden", looks } as const]),
      ...careByPlace(open, asOf, recordedAt),
    ],
  };
}

interface TaskOf {
  readonly step: Step;
  /** Index of the step, or of the one that it is done ahead of. */
  readonly at: number;
  /** Whether somebody would have written it down. */
  readonly isRecorded: boolean;
}

/** Finds the task of a step in its days; none where it lies too far ahead, or is over. */
function taskFinder(projection: Projection, daysAhead: number) {
  return (
    state: BatchState,
    { from, usual, by }: TaskWindow,
    { step, at, isRecorded }: TaskOf,
  ): readonly Task[] => {
    const { batch, method, asOf } = state;
    if (from > asOf + daysAhead) return [];
    const isPast = by < asOf;
    // A step that can't be recorded is a reminder in its time; nobody could ever tick it off.
    if (isPast && (!isRecorded || step.kind === "look")) return [];
    const likely = likelyPlants(projection, state, at);
    const { worked: plants } = likely;
    const status = isPast ? "late" : from <= asOf ? "due" : "coming";
    return [
      {
        batch: batch.name,
        variety: batch.variety,
        place: batch.place,
        step,
        method: method.name,
        plants,
        isEstimate: plants !== null && plants !== state.plants,
        get passing() {
          return likely.passing;
        },
        get way() {
          const start = startOfForecast(state);
          const { variety } = batch;
          return start === null ? null : { method, after: start.at, upTo: at, variety };
        },
        doOn: Math.max(usual, asOf) as CivilDay,
        from,
        by,
        status,
        daysLate: isPast ? asOf - by : 0,
        hours: plants === null || step.perPersonHour === null ? null : plants / step.perPersonHour,
      },
    ];
  };
}

/** Whether any batch of the records was ever recorded to have had a step. */
function recordedSteps({ batches, stepKeys }: Records): (key: string) => boolean {
  const known = new Map<string, boolean>();
  return (key) =>
    madeOnce(known, key, () => {
      const at = stepKeys.indexOf(key);
      return batches.some(({ days, counts }) => (days[at] ?? counts[at] ?? null) !== null);
    });
}

const STATUS_ORDER: Readonly<Record<DueStatus, number>> = { late: 0, due: 1, coming: 2 };

function isLook({ step }: Task): boolean {
  return step.kind === "look";
}

function inTurn(a: Task, b: Task): number {
  return (
    Number(isLook(a)) - Number(isLook(b)) ||
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
