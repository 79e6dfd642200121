import { type ShareMoments, WHOLE } from "../statistics/beta-moments";
import { type StepLength, windowLength } from "../statistics/step-length";
import type { Method, Step } from "../timetable/timetable";

/**
 * What is believed of batches to come: how long each step takes, and what share of the plants
 * passes it. A forecaster may know more than the timetable; nothing else in the projection does.
 */
export interface Forecaster {
  length(method: Method, step: Step): StepLength;
  /** The share that a new batch keeps at a counted step. */
  kept(method: Method, step: Step, variety: string): ShareMoments;
}

/** The timetable's share counts like so many batches of the nursery's own (our choice). */
const PRIOR_BATCHES = 3;
/** Mean correlation of plants within a batch before anything is recorded (our choice). */
const PRIOR_CORRELATION = 0.1;

/** A forecaster that believes the timetable alone. */
export function timetableForecaster(): Forecaster {
  const lengths = new Map<Step, StepLength>();
  return {
    length: (_method, step) => {
      let length = lengths.get(step);
      if (length === undefined) {
        length = windowLength(step);
        lengths.set(step, length);
      }
      return length;
    },
    kept: (_method, step) => (step.kept === null ? WHOLE : newBatchShare(step.kept)),
  };
}

/**
 * Moments of the share that a new batch keeps when the mean share m is known as well as a few
 * batches tell it: E[X] = m, Var(X) = m(1 − m)(r + (1 − r) r/b), with r the correlation within a
 * batch and r/b the remaining doubt about the mean, both as shares of m(1 − m).
 */
export function newBatchShare(mean: number): ShareMoments {
  const doubt = PRIOR_CORRELATION / PRIOR_BATCHES;
  const spread = PRIOR_CORRELATION + (1 - PRIOR_CORRELATION) * doubt;
  return { mean, meanSquare: mean * mean + mean * (1 - mean) * spread };
}
