import { type Answer, type AnswerValue, columns } from "../answer";
import type { CivilDay } from "../dates/civil-day";
import { sentenceDay } from "../dates/day-text";
import { taskWindow } from "../due/task-window";
import { leftOutRemark, type Records } from "../records/records";
import { methodFinder } from "../timetable/method-of-batch";
import type { Timetable } from "../timetable/timetable";
import { type BatchState, stateFinder } from "./batch-state";
import { dayForecaster } from "./forecast-days";
import { plantForecaster } from "./forecast-plants";
import { type Forecaster, timetableForecaster } from "./forecaster";
import { nextStep } from "./next-step";

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

export interface ProjectionQuestion {
  readonly records: Records;
  readonly timetable: Timetable;
  readonly asOf: CivilDay;
  /** How many of 100 ranges should hold, as a share strictly between 0 and 1. */
  readonly level: number;
}

/** Where each open batch stands, what comes next, and when how many plants will be ready. */
export function stagesAnswer(
  { records, timetable, asOf, level }: ProjectionQuestion,
  forecaster: Forecaster = timetableForecaster(),
): Answer {
  const methodOf = methodFinder(timetable);
  const findState = stateFinder(records, asOf);
  const days = dayForecaster(forecaster, asOf, level);
  const plants = plantForecaster(forecaster, level);
  const rows: AnswerValue[][] = [];
  for (const batch of records.batches) {
    const method = methodOf(batch);
    if (method === null) {
      if (!batch.closed) rows.push(withoutMethod(batch));
      continue;
    }
    const state = findState(batch, method);
    if (!state.open) continue;
    const next = nextStep(state);
    const nextDays = next === null ? null : days(state, next);
    const readyDays = days(state, method.ready);
    const readyPlants = plants(state, method.ready);
    rows.push([
      batch.name,
      batch.variety || null,
      method.name,
      batch.place || null,
      state.lastDone === null ? null : (method.steps[state.lastDone]?.name ?? null),
      state.lastDone === null ? null : (state.doneOn[state.lastDone] ?? null),
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
      remarkOn(state, next),
    ]);
  }
  return { columns: COLUMNS, rows, remark: leftOutRemark(records) };
}

function remarkOn(state: BatchState, next: number | null): string | null {
  if (state.reached === -1) {
    return state.plannedOn.some((day) => day !== null) ? "Planned" : "No day recorded yet";
  }
  if (state.lastDone === null) return "No day recorded: no dates can be told";
  if (next === null) return null;
  const window = taskWindow(state, next);
  if (window !== null && window.by < state.asOf) {
    return `${state.method.steps[next]?.name} was due by ${sentenceDay(window.by)}`;
  }
  return state.plants === null ? "No plants counted yet" : null;
}

function withoutMethod(batch: Records["batches"][number]): AnswerValue[] {
  const row: AnswerValue[] = COLUMNS.map(() => null);
  row[0] = batch.name;
  row[1] = batch.variety || null;
  row[2] = batch.method;
  row[3] = batch.place || null;
  row[17] = "The timetable has no such method";
  return row;
}
