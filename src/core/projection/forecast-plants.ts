import { madeOnce } from "../made-once";
import { betaBinomialRange, betaOfMoments, type ShareMoments } from "../statistics";
import { type BatchState, startOfForecast } from "./batch-state";
import { dayAbout } from "./changes";
import type { Forecaster } from "./forecaster";

/** A range of plants in plain words: fewest, likely, most. */
export interface PlantRange {
  readonly fewest: number;
  readonly likely: number;
  readonly most: number;
}

/**
 * Forecasts how many of the plants standing will pass a step: the product of the shares kept at
 * the counted steps between, matched by a beta, on the plants standing.
 *
 * @param level how many of 100 ranges should hold, as a share
 */
export function plantForecaster(
  forecaster: Forecaster,
  level: number,
): (state: BatchState, step: number) => PlantRange | null {
  const ranges = new Map<string, PlantRange>();
  return (state, step) => {
    const start = startOfForecast(state);
    if (start === null) return null;
    const { plants, at: after } = start;
    const { method, batch } = state;
    const from = dayAbout(state.doneOn[after] ?? state.plannedOn[after] ?? state.asOf);
    const key = `${method.name}\n${batch.variety}\n${after} ${step} ${plants} ${from}`;
    return madeOnce(ranges, key, () => {
      const share = forecaster.kept({ method, after, upTo: step, variety: batch.variety, from });
      return rangeOf(plants, share, level);
    });
  };
}

function rangeOf(plants: number, share: ShareMoments, level: number): PlantRange {
  const beta = betaOfMoments(share);
  if (beta === null) {
    const certain = Math.round(plants * share.mean);
    return { fewest: certain, likely: certain, most: certain };
  }
  return betaBinomialRange(plants, beta, level);
}
