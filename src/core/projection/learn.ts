import { madeOnce } from "../made-once";
import type { Method } from "../timetable";
import type { BatchState } from "./batch-state";
import type { Forecaster, SharesDrawn } from "./forecaster";
import { type LearnedLengths, learnedLengths } from "./learned-lengths";
import { type LearnedShares, learnedShares } from "./learned-shares";

/**
 * A forecaster that knows the nursery's own records beside the timetable.
 *
 * @param states where the batches stand, by what is known on the as-of day
 */
export function learn(states: readonly BatchState[]): Forecaster {
  const byMethod = new Map<Method, BatchState[]>();
  for (const state of states) madeOnce(byMethod, state.method, () => []).push(state);
  const statesOf = (method: Method) => byMethod.get(method) ?? [];
  const lengths = new Map<Method, LearnedLengths>();
  const shares = new Map<Method, LearnedShares>();
  const lengthsOf = (method: Method) =>
    madeOnce(lengths, method, () => learnedLengths(method, statesOf(method)));
  const sharesOf = (method: Method) =>
    madeOnce(shares, method, () => learnedShares(method, statesOf(method)));
  return {
    length: (method, step, from) => lengthsOf(method).length(step, from),
    straight: (way) => lengthsOf(way.method).straight(way),
    kept: (passage) => sharesOf(passage.method).kept(passage),
    draw: (uniform) => {
      const drawn = new Map<Method, SharesDrawn>();
      return {
        between: (passage) =>
          madeOnce(drawn, passage.method, () => sharesOf(passage.method).draw(uniform)).between(
            passage,
          ),
      };
    },
  };
}
