import { type Answer, type AnswerValue, columns } from "../answer";
import type { CivilDay } from "../dates/civil-day";
import { sentenceDay } from "../dates/day-text";
import { taskWindow } from "../due/task-window";
import type { Batch } from "../records/batch";
import { leftOutRemark } from "../records/records";
import type { BatchState } from "./batch-state";
import type { Forecaster } from "./forecaster";
import { nextStep } from "./next-step";
import { type Projection, type ProjectionQuestion, project } from "./project";
import { isSilent } from "./silence";

const COLUMNS = columns({
  Batch: "text",
  Variety: "text",
  Method: "text",
  Place: "text",
  "Last step": "text",
  "Done on": "day",
  Plants: "count",
  "Next step": "text",
  "Next from": "day",
  "Next likely": "day",
  "Next by": "day",
  "Ready from": "day",
  "Ready likely": "day",
  "Ready by": "day",
  "Fewest ready": "count",
  "Likely ready": "count",
  "Most ready": "count",
  Remark: "text",
});

/**
 * Where each open batch stands, what comes next, and when how many plants will be ready.
 *
 * @param believing what is believed of batches to come; what the records teach, if left out
 */
export function stagesAnswer(question: ProjectionQuestion, believing?: Forecaster): Answer {
  const projection = project(question, believing);
  const rows: AnswerValue[][] = [];
  for (const { batch, state } of projection.batches) {
    if (state === null) {
      if (!batch.closed) rows.push(withoutMethod(batch));
    } else if (state.open) rows.push(rowOf(state, projection));
  }
  return { columns: COLUMNS, rows, remark: leftOutRemark(question.records) };
}

function rowOf(state: BatchState, { days, plants }: Projection): AnswerValue[] {
  const { batch, method, lastDone } = state;
  const next = nextStep(state);
  const silent = isSilent(state);
  const nextDays = next === null || silent ? null : days.range(state, next);
  const readyDays = silent ? null : days.range(state, method.ready);
  const readyPlants = silent ? null : plants(state, method.ready);
  return [
    batch.name,
    batch.variety || null,
    method.name,
    batch.place || null,
    lastDone === null ? null : (method.steps[lastDone]?.name ?? null),
    lastDone === null ? null : (state.doneOn[lastDone] ?? null),
    state.plants,
    next === null ? null : (method.steps[next]?.name ?? null),
    nextDays?.from ?? null,
    nextDays?.likely ?? null,
    nextDays?.by ?? null,
    readyDays?.from ?? null,
    readyDays?.likely ?? null,
    readyDays?.by ?? null,
    readyPlants?.fewest ?? null,
    readyPlants?.likely ?? null,
    readyPlants?.most ?? null,
    silent ? silenceRemark(state) : remarkOn(state, next),
  ];
}

function silenceRemark({ lastDone, doneOn }: BatchState): string {
  const since = lastDone === null ? null : (doneOn[lastDone] ?? null);
  const when = since === null ? "" : ` since ${sentenceDay(since)}`;
  return `Nothing recorded${when}: set aside. Close it, or record what happened`;
}

function remarkOn(state: BatchState, next: number | null): string | null {
  if (state.reached === -1) {
    return state.plannedOn.some((day) => day !== null) ? "Planned" : "No day recorded yet";
  }
  if (state.lastDone === null) return "No day recorded: no dates can be told";
  if (next === null) return null;
  const window = taskWindow(state, next);
  if (window !== null && window.by < state.asOf) {
    const since = sentenceDay(state.doneOn[state.lastDone] as CivilDay);
    const name = state.method.steps[next]?.name;
    return `${name} was due by ${sentenceDay(window.by)}; nothing recorded since ${since}`;
  }
  return state.plants === null ? "No plants counted yet" : null;
}

function withoutMethod(batch: Batch): AnswerValue[] {
  const row: AnswerValue[] = COLUMNS.map(() => null);
  row[0] = batch.name;
  row[1] = batch.variety || null;
  row[2] = batch.method;
  row[3] = batch.place || null;
  row[17] = "The timetable has no such method";
  return row;
}
