import type { CivilDay } from "../dates";
import { madeOnce } from "../made-once";
import {
  newBatchShare,
  product,
  type ShareMoments,
  SPREAD_OF_A_NEW_BATCH,
  type StepLength,
  WHOLE,
  windowLength,
} from "../statistics";
import type { Method, Step } from "../timetable";

/** A batch's way from one step of its method on to a later one. */
export interface Passage {
  readonly method: Method;
  /** Index of the step that it starts after. */
  readonly after: number;
  /** Index of the last step on the way. */
  readonly upTo: number;
  readonly variety: string;
  /** The day on which the batch stands at the first; null for no day of the year. */
  readonly from: CivilDay | null;
}

/**
 * What is believed of batches to come: how long each step takes, and what share of the plants
 * passes. A forecaster may know more than the timetable; nothing else in the projection does.
 */
export interface Forecaster {
  length(method: Method, step: Step, from: CivilDay | null): StepLength;
  /**
   * How long it takes from one step straight to a later one, past the steps between; null where too few
   * batches were seen to go that way.
   */
  straight(way: Way): StepLength | null;
  /** The share of plants that a new batch keeps on its way. */
  kept(passage: Passage): ShareMoments;
  /** One possible truth about the shares, drawn once and common to all batches. */
  draw(uniform: () => number): SharesDrawn;
}

/** The same, whenever. */
export type PassageAnyDay = Omit<Passage, "from">;

/** From one step straight to a later one, by index. */
export type Way = Omit<Passage, "variety">;

/** A possible truth about the shares kept. */
export interface SharesDrawn {
  /** The shares along the way, each a beta about its mean. */
  between(passage: Passage): readonly DrawnShare[];
}

export interface DrawnShare {
  readonly mean: number;
  /** Of the plants within a batch. */
  readonly correlation: number;
}

/** The timetable's share kept after one step, up to and with another. */
export function timetableShare(method: Method, after: number, upTo: number): number {
  let share = 1;
  for (let index = after + 1; index <= upTo; index += 1) share *= method.steps[index]?.kept ?? 1;
  return share;
}

/** A forecaster that believes the timetable alone. */
export function timetableForecaster(): Forecaster {
  const lengths = new Map<Step, StepLength>();
  return {
    length: (_method, step) => madeOnce(lengths, step, () => windowLength(step)),
    straight: () => null,
    kept: ({ method, after, upTo }) => {
      let share = WHOLE;
      for (let index = after + 1; index <= upTo; index += 1) {
        const kept = method.steps[index]?.kept ?? null;
        if (kept !== null) share = product(share, newBatchShare(kept));
      }
      return share;
    },
    draw: () => ({
      between: ({ method, after, upTo }) =>
        method.steps
          .slice(after + 1, upTo + 1)
          .flatMap(({ kept }) =>
            kept === null ? [] : [{ mean: kept, correlation: SPREAD_OF_A_NEW_BATCH }],
          ),
    }),
  };
}
