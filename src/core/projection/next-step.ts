import type { BatchState } from "./batch-state";
import { taskWindow } from "./task-window";

/**
 * The first step still to come. A step that the table has no column for is taken as done once its
 * window is past.
 *
 * @returns null when the batch has reached the end of its method
 */
export function nextStep(state: BatchState): number | null {
  for (let step = state.reached + 1; step < state.method.steps.length; step += 1) {
    if (state.skipped[step]) continue;
    if (state.recordable[step]) return step;
    const window = taskWindow(state, step);
    if (window === null || window.by >= state.asOf) return step;
  }
  return null;
}
