import { type Answer, type AnswerValue, columns } from "../answer";
import { leftOutRemark } from "../records/records";
import type { Forecaster } from "./forecaster";
import { type ProjectionQuestion, project } from "./project";
import { isSilent } from "./silence";

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
 * closed batch, and one forgotten long ago, has nothing still to come.
 *
 * @param believing what is believed of batches to come; what the records teach, if left out
 */
export function stepsAnswer(question: ProjectionQuestion, believing?: Forecaster): Answer {
  const { batches, days, plants } = project(question, believing);
  const rows: AnswerValue[][] = [];
  for (const { batch, state } of batches) {
    if (state === null) continue;
    const { method } = state;
    const ongoing = state.open && !isSilent(state);
    for (let index = 0; index < method.steps.length; index += 1) {
      const step = method.steps[index];
      const toCome = ongoing && index > state.reached;
      const when = toCome ? days.range(state, index) : null;
      const many = toCome && step?.counted ? plants(state, index) : null;
      rows.push([
        batch.name,
        step?.name ?? null,
        state.doneOn[index] ?? null,
        state.counts[index] ?? null,
        when?.from ?? null,
        when?.likely ?? null,
        when?.by ?? null,
        many?.fewest ?? null,
        many?.likely ?? null,
        many?.most ?? null,
      ]);
    }
  }
  return { columns: COLUMNS, rows, remark: leftOutRemark(question.records) };
}
