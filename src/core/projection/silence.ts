import type { BatchState } from "./batch-state";
import { nextStep } from "./next-step";
import { taskWindow } from "./task-window";

/** A batch so long past its next step's latest day is taken as forgotten (our choice). */
const FORGOTTEN_AFTER_DAYS = 120;

/**
 * Whether nothing has been written about an open batch for so long that it was likely closed
 * without a word. Such batches are named, and not mixed into what is learned or promised.
 */
export function isSilent(state: BatchState): boolean {
  const next = nextStep(state);
  if (next === null || state.lastDone === null) return false;
  const window = taskWindow(state, next);
  return window !== null && state.asOf - window.by > FORGOTTEN_AFTER_DAYS;
}
