import type { Kinds, RowOf } from "../answer";
import type { LeftOut } from "../records";
import { leftOutByMethod } from "../timetable";
import type { Forecaster } from "./forecaster";
import { type ProjectionQuestion, project } from "./project";
import { isSilent } from "./silence";

export const STEP_COLUMNS = {
  batch: "text",
  step: "text",
  recordedOn: "day",
  recordedCount: "count",
  from: "day",
  likely: "day",
  by: "day",
  fewest: "count",
  likelyCount: "count",
  most: "count",
} as const satisfies Kinds;

/** A step of a batch: what is recorded, and what is expected where it is still to come. */
export type StepRow = RowOf<typeof STEP_COLUMNS, { readonly batch: string; readonly step: string }>;

export interface BatchSteps {
  readonly rows: readonly StepRow[];
  readonly remarks: readonly LeftOut[];
}

/**
 * Every step of every batch: what is recorded, and for steps still to come what is expected. A
 * closed batch, and one forgotten long ago, has nothing still to come.
 *
 * @param believing what is believed of batches to come; what the records teach, if left out
 */
export function stepsOf(question: ProjectionQuestion, believing?: Forecaster): BatchSteps {
  const { batches, days, plants } = project(question, believing);
  const rows: StepRow[] = [];
  for (const { batch, state } of batches) {
    if (state === null) continue;
    const ongoing = state.open && !isSilent(state);
    state.method.steps.forEach((step, index) => {
      const toCome = ongoing && index > state.reached;
      const when = toCome ? days.range(state, index) : null;
      const many = toCome && step.counted ? plants(state, index) : null;
      rows.push({
        batch: batch.name,
        step: step.name,
        recordedOn: state.doneOn[index] ?? null,
        recordedCount: state.counts[index] ?? null,
        from: when?.from ?? null,
        likely: when?.likely ?? null,
        by: when?.by ?? null,
        fewest: many?.fewest ?? null,
        likelyCount: many?.likely ?? null,
        most: many?.most ?? null,
      });
    });
  }
  return { rows, remarks: leftOutByMethod(question) };
}
