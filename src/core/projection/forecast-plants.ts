import { betaBinomialQuantiles } from "../statistics/beta-binomial";
import { betaOfMoments, product, type ShareMoments, WHOLE } from "../statistics/beta-moments";
import type { Step } from "../timetable/timetable";
import type { BatchState } from "./batch-state";
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
  const side = (1 - level) / 2;
  return (state, step) => {
    const { plants, lastCounted, method, batch } = state;
    if (plants === null || lastCounted === null) return null;
    const key = `${method.name}\n${batch.variety}\n${lastCounted} ${step} ${plants}`;
    let range = ranges.get(key);
    if (range === undefined) {
      range = rangeOf(plants, keptBetween(state, lastCounted, step, forecaster), side);
      ranges.set(key, range);
    }
    return range;
  };
}

/** Moments of the share of plants that pass all counted steps after one step, up to another. */
export function keptBetween(
  { method, batch }: Pick<BatchState, "method" | "batch">,
  after: number,
  upTo: number,
  forecaster: Forecaster,
): ShareMoments {
  let share = WHOLE;
  for (let place = after + 1; place <= upTo; place += 1) {
    const step = method.steps[place] as Step;
    if (step.counted) share = product(share, forecaster.kept(method, step, batch.variety));
  }
  return share;
}

function rangeOf(plants: number, share: ShareMoments, side: number): PlantRange {
  const beta = betaOfMoments(share);
  if (beta === null) {
    const certain = Math.round(plants * share.mean);
    return { fewest: certain, likely: certain, most: certain };
  }
  const [fewest, likely, most] = betaBinomialQuantiles(plants, beta, [side, 0.5, 1 - side]);
  return { fewest, likely, most } as PlantRange;
}
