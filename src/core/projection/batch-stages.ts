import { blankRow, type Kinds, type RowOf } from "../answer";
import type { CivilDay } from "../dates";
import type { Batch, LeftOut, MethodsUnread } from "../records";
import { batchMethods, leftOutByMethod } from "../timetable";
import type { BatchState } from "./batch-state";
import type { Forecaster } from "./forecaster";
import { nextStep } from "./next-step";
import { type Projection, type ProjectionQuestion, project } from "./project";
import { isSilent } from "./silence";
import { taskWindow } from "./task-window";

export const STAGE_COLUMNS = {
  batch: "text",
  variety: "text",
  method: "text",
  place: "text",
  lastStep: "text",
  doneOn: "day",
  plants: "count",
  nextStep: "text",
  nextFrom: "day",
  nextLikely: "day",
  nextBy: "day",
  readyFrom: "day",
  readyLikely: "day",
  readyBy: "day",
  fewestReady: "count",
  likelyReady: "count",
  mostReady: "count",
  remark: "text",
} as const satisfies Kinds;

/** What keeps a batch from being told more of, or should be looked at. */
export type StageRemark =
  /** Nothing was recorded for so long that no forecast counts the batch. */
  | { readonly code: "set-aside"; readonly since: CivilDay }
  | { readonly code: "planned" }
  | { readonly code: "no-day-yet" }
  /** Counts but no day, so that there is nothing to count days from. */
  | { readonly code: "no-dates" }
  | {
      readonly code: "next-late";
      readonly step: string;
      readonly by: CivilDay;
      readonly since: CivilDay;
    }
  | { readonly code: "no-plants-counted" }
  | { readonly code: "no-such-method" }
  | { readonly code: "several-methods" };

/** Where an open batch stands and what comes next. Null is not known, or does not apply. */
export type StageRow = RowOf<
  typeof STAGE_COLUMNS,
  { readonly batch: string; readonly method: string; readonly remark: StageRemark | null }
>;

export interface BatchStages {
  readonly rows: readonly StageRow[];
  readonly remarks: readonly LeftOut[];
}

/**
 * Where each open batch stands, what comes next, and when how many plants will be ready.
 *
 * @param believing what is believed of batches to come; what the records teach, if left out
 */
export function stagesOf(question: ProjectionQuestion, believing?: Forecaster): BatchStages {
  const projection = project(question, believing);
  const methodOf = batchMethods(question.timetable);
  const rows: StageRow[] = [];
  for (const { batch, state } of projection.batches) {
    if (state === null) {
      const { code } = methodOf(batch);
      if (!batch.closed && code !== "method") rows.push(withoutMethod(batch, { code }));
    } else if (state.open) rows.push(rowOf(state, projection));
  }
  return { rows, remarks: leftOutByMethod(question, ({ closed }) => closed) };
}

function rowOf(state: BatchState, { days, plants }: Projection): StageRow {
  const { batch, method, lastDone } = state;
  const next = nextStep(state);
  const silent = isSilent(state);
  const nextDays = next === null || silent ? null : days.range(state, next);
  const readyDays = silent ? null : days.range(state, method.ready);
  const readyPlants = silent ? null : plants(state, method.ready);
  return {
    batch: batch.name,
    variety: batch.variety || null,
    method: method.name,
    place: batch.place || null,
    lastStep: lastDone === null ? null : (method.steps[lastDone]?.name ?? null),
    doneOn: lastDone === null ? null : (state.doneOn[lastDone] ?? null),
    plants: state.plants,
    nextStep: next === null ? null : (method.steps[next]?.name ?? null),
    nextFrom: nextDays?.from ?? null,
    nextLikely: nextDays?.likely ?? null,
    nextBy: nextDays?.by ?? null,
    readyFrom: readyDays?.from ?? null,
    readyLikely: readyDays?.likely ?? null,
    readyBy: readyDays?.by ?? null,
    fewestReady: readyPlants?.fewest ?? null,
    likelyReady: readyPlants?.likely ?? null,
    mostReady: readyPlants?.most ?? null,
    remark: remarkOn(state, next, silent),
  };
}

function remarkOn(state: BatchState, next: number | null, silent: boolean): StageRemark | null {
  if (state.reached === -1) {
    const isPlanned = state.plannedOn.some((day) => day !== null);
    return { code: isPlanned ? "planned" : "no-day-yet" };
  }
  if (state.lastDone === null) return { code: "no-dates" };
  const since = state.doneOn[state.lastDone] as CivilDay;
  if (silent) return { code: "set-aside", since };
  if (next === null) return null;
  const window = taskWindow(state, next);
  if (window !== null && window.by < state.asOf) {
    const step = state.method.steps[next]?.name ?? "";
    return { code: "next-late", step, by: window.by, since };
  }
  return state.plants === null ? { code: "no-plants-counted" } : null;
}

function withoutMethod(
  { name, variety, method, place }: Batch,
  remark: StageRemark & { readonly code: MethodsUnread["code"] },
): StageRow {
  return {
    ...blankRow(STAGE_COLUMNS),
    batch: name,
    variety: variety || null,
    method,
    place: place || null,
    remark,
  };
}
