import { describe, expect, it } from "vitest";
import { plantForecaster } from "../../../src/core/projection/forecast-plants";
import { timetableForecaster, timetableShare } from "../../../src/core/projection/forecaster";
import { newBatchShare } from "../../../src/core/statistics/share-prior";
import { type Draws, seededDraws } from "../../support/draws";
import { drawBeta, drawNursery } from "../../support/prior-draws";
import { COCOA, stateOf } from "./states";

const forecaster = timetableForecaster();

/** The share that a new batch of an unknown nursery keeps. */
function drawNewBatch(draws: Draws, kept: number): number {
  const { varieties, correlation } = drawNursery(draws, kept, 1);
  return drawBeta(draws, varieties[0] as number, correlation);
}

describe.each([0.85, 0.5, 0.99])("a new batch's share of %d against draws", (kept) => {
  it("has the moments of a nursery, a variety in it and a batch of it, each doubtful", () => {
    const draws = seededDraws(7);
    const times = 200_000;
    let [sum, squares, fourths] = [0, 0, 0];
    for (let time = 0; time < times; time += 1) {
      const share = drawNewBatch(draws, kept);
      sum += share;
      squares += share * share;
      fourths += share ** 4;
    }
    const { mean, meanSquare } = newBatchShare(kept);
    // Four standard errors of the drawn means.
    const meanError = Math.sqrt((squares / times - (sum / times) ** 2) / times);
    const squareError = Math.sqrt((fourths / times - (squares / times) ** 2) / times);
    expect(Math.abs(sum / times - mean)).toBeLessThan(4 * meanError);
    expect(Math.abs(squares / times - meanSquare)).toBeLessThan(4 * squareError);
    expect(mean).toBe(kept);
  });
});

describe("a new batch's share", () => {
  it("is certain where all are kept, or none", () => {
    expect(newBatchShare(1)).toEqual({ mean: 1, meanSquare: 1 });
    expect(newBatchShare(0)).toEqual({ mean: 0, meanSquare: 0 });
  });
});

const CASES = [
  { facts: { "Seeds sown": 1000 }, kept: [0.85, 0.8, 0.75, 0.9], times: 1_000_000 },
  { facts: { "Grafts made": 400 }, kept: [0.75, 0.9], times: 100_000 },
  { facts: { Takes: 60 }, kept: [0.9], times: 100_000 },
  { facts: { Germinated: 7 }, kept: [0.8, 0.75, 0.9], times: 100_000 },
] as const;

/** Variance of a new batch's share as a part of m(1 − m). */
const SPREAD = (newBatchShare(0.5).meanSquare - 0.25) / 0.25;

describe.each(CASES)("plants of $facts against $times draws", ({ facts, kept, times }) => {
  const state = stateOf(facts);
  const plants = state.plants as number;
  const after = state.lastCounted as number;

  it("have the mean and mean square of the product exactly", () => {
    const moments = forecaster.kept({
      method: COCOA,
      after,
      upTo: COCOA.ready,
      variety: "",
      from: null,
    });
    const mean = kept.reduce<number>((all, share) => all * share, 1);
    const square = kept.reduce<number>(
      (all, share) => all * (share * share + share * (1 - share) * SPREAD),
      1,
    );
    expect(moments.mean).toBeCloseTo(mean, 13);
    expect(moments.meanSquare).toBeCloseTo(square, 13);
    expect(timetableShare(COCOA, after, COCOA.ready)).toBeCloseTo(mean, 13);
  });

  it("lie within one plant or 0.5 % of those drawn: a product of betas, then a binomial", () => {
    const draws = seededDraws(20261125);
    const counts = new Int32Array(times);
    for (let time = 0; time < times; time += 1) {
      let share = 1;
      for (const mean of kept) share *= drawBeta(draws, mean, SPREAD);
      counts[time] = draws.binomial(plants, share);
    }
    counts.sort();
    const drawn = (chance: number) => counts[Math.ceil(chance * times) - 1] as number;
    // The whole number below which the share of draws comes nearest to the chance.
    const below = (count: number) => counts.filter((one) => one < count).length / times;
    const nearest = (chance: number) =>
      [-2, -1, 0, 1, 2]
        .map((step) => drawn(chance) + step)
        .reduce((best, count) =>
          Math.abs(below(count) - chance) < Math.abs(below(best) - chance) ? count : best,
        );
    for (const level of [0.8, 0.5]) {
      const range = plantForecaster(forecaster, level)(state, COCOA.ready);
      const side = (1 - level) / 2;
      const pairs = [
        [range?.fewest, nearest(side)],
        [range?.likely, drawn(0.5)],
        [range?.most, nearest(1 - side) - 1],
      ] as const;
      for (const [ours, theirs] of pairs) {
        expect(Math.abs((ours as number) - theirs)).toBeLessThanOrEqual(
          Math.max(1, 0.005 * theirs),
        );
      }
    }
  });
});
