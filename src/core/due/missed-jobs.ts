import type { BatchState } from "../projection";
import { hangsOn } from "../timetable";

/**
 * Indexes of jobs that were skipped: a later step is recorded, the job is not, nor anything that hangs on it
 * and so could not have been done without it. Shoots grow under a wrap that binds, so that buds prove nothing,
 * counted or not; nor does a look.
 */
export function missedJobs(state: BatchState): readonly number[] {
  const { method, reached, recordable, doneOn, plannedOn, counts } = state;
  const isKnown = (index: number) =>
    (doneOn[index] ?? null) !== null || (counts[index] ?? null) !== null;
  const isProved = (index: number): boolean =>
    method.steps.some(
      (step, at) =>
        hangsOn(method, step) === index && ((isKnown(at) && step.kind !== "look") || isProved(at)),
    );
  const missed: number[] = [];
  for (let index = 0; index < reached; index += 1) {
    const step = method.steps[index];
    if (step === undefined || step.after === null || step.kind !== "job") continue;
    if (!recordable[index] || isKnown(index) || (plannedOn[index] ?? null) !== null) continue;
    if (!isProved(index)) missed.push(index);
  }
  return missed;
}
