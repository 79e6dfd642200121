import { type Answer, type AnswerValue, columns } from "../answer";
import { leftOutRemark } from "../records/records";
import { methodFinder } from "../timetable/method-of-batch";
import { stateFinder } from "./batch-state";
import { dayForecaster } from "./forecast-days";
import { plantForecaster } from "./forecast-plants";
import { type Forecaster, timetableForecaster } from "./forecaster";
import type { ProjectionQuestion } from "./stages-answer";

const COLUMNS = columns({
  Batch: "text",
  Step: "text",
  "Recorded on": "day",
  "Recorded count": "count",
  From: "day",
  Likely: "day",
  By: "day",
  Fewest: "count",
  "Likely count": "count",
  Most: "count",
});

/**
 * Every step of every batch: what is recorded, and for steps still to come what is expected. A
 * closed batch has nothing still to come.
 */
export function stepsAnswer(
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
    if (method === null) continue;
    const state = findState(batch, method);
    for (let place = 0; place < method.steps.length; place += 1) {
      const step = method.steps[place];
      const toCome = state.open && place > state.reached;
      const when = toCome ? days(state, place) : null;
      const many = toCome && step?.counted ? plants(state, place) : null;
      rows.push([
        batch.name,
        step?.name ?? null,
        state.doneOn[place] ?? null,
        state.counts[place] ?? null,
        when?.from ?? null,
        when?.likely ?? null,
        when?.by ?? null,
        many?.fewest ?? null,
        many?.likely ?? null,
        many?.most ?? null,
      ]);
    }
  }
  return { columns: COLUMNS, rows, remark: leftOutRemark(records) };
}
