import { describe, expect, it } from "vitest";
import { additiveFit } from "../../../src/core/statistics/additive-fit";
import { batchCorrelation } from "../../../src/core/statistics/batch-correlation";
import type { ComparedBatch } from "../../../src/core/statistics/evened-groups";
import { fairComparison } from "../../../src/core/statistics/fair-comparison";
import { tamedBatches } from "../../../src/core/statistics/tamed-batches";
import { seededDraws } from "../../support/draws";

const fitted = (taken: number, grafted = 100, share = 0.5, leverage = 0) => ({
  ...{ taken, grafted, share, leverage },
});

describe("batchCorrelation", () => {
  it("is by hand what is left of the squares over chance", () => {
    // Squares over grafts: 10² ÷ 100 = 1 each, chance 0.25 each: excess 1.5 over 2 batches; pull
    // 0.25 × 99 × 2 = 49.5; 1.5 ÷ 49.5 = 0.030303.
    expect(batchCorrelation([fitted(60), fitted(40)]).own).toBeCloseTo(1.5 / 49.5, 12);
  });

  it("is what is believed where there is nothing to learn from", () => {
    // Chance alone 0.4; else √correlation with density 1 ÷ (1 + r²) on 0 to 1, of which r² has the mean
    // (1 − π/4) ÷ (π/4) and r⁴ the mean (1/3 − 1 + π/4) ÷ (π/4).
    const quarter = Math.PI / 4;
    const mean = (0.6 * (1 - quarter)) / quarter;
    const square = (0.6 * (1 / 3 - 1 + quarter)) / quarter;
    for (const told of [[], [fitted(50, 100, 0.5, 1)]]) {
      const { correlation, variance } = batchCorrelation(
        told.map((one) => ({ ...one, taken: 50 })),
      );
      expect(correlation).toBeCloseTo(mean, 3);
      expect(variance).toBeCloseTo(square - mean * mean, 3);
    }
  });

  it("is near 0 and sure of it where batches differ less than chance", () => {
    const steady = batchCorrelation(Array.from({ length: 40 }, () => fitted(50)));
    expect(steady.own).toBe(0);
    expect(steady.correlation).toBeLessThan(0.002);
    expect(Math.sqrt(steady.variance)).toBeLessThan(0.002);
  });

  it("is surer the more batches there are, about what they say", () => {
    const told = (batches: number) =>
      batchCorrelation(Array.from({ length: batches }, (_, i) => fitted(i % 2 === 0 ? 60 : 40)));
    const [few, many] = [told(10), told(1000)];
    // Squares 4 times what chance makes: 1 + 99 × correlation = 4.
    expect(many.correlation).toBeCloseTo(3 / 99, 3);
    expect(Math.sqrt(many.variance)).toBeLessThan(Math.sqrt(few.variance) / 5);
    // 1,000 squares: their mean is known to √(2 ÷ 1,000) of it.
    expect(Math.sqrt(many.variance)).toBeCloseTo((4 * Math.sqrt(2 / 1000)) / 99, 4);
  });

  it("finds the correlation that beta-binomial batches of unequal size were drawn with", () => {
    const draws = seededDraws(11);
    const truth = 0.06;
    const batches: ComparedBatch[] = Array.from({ length: 3000 }, (_, index) => {
      const grafted = 20 + (index % 9) * 25;
      const mean = index % 3 === 0 ? 0.6 : 0.8;
      const sum = 1 / truth - 1;
      const share = draws.beta(mean * sum, (1 - mean) * sum);
      return {
        ...{ group: index % 4, stratum: index % 3, grafted },
        taken: draws.binomial(grafted, share),
      };
    });
    const { own } = batchCorrelation(additiveFit(batches, 4, truth));
    // 3,000 batches: a relative error of about √(2 ÷ 3,000) × 1.3, three times over 0.006.
    expect(Math.abs(own - truth)).toBeLessThan(0.006);
  });
});

describe("tamedBatches", () => {
  const usual: ComparedBatch[] = Array.from({ length: 30 }, (_, index) => ({
    ...{ group: index % 3, stratum: 0, grafted: 100, taken: 75 + ((index * 7) % 11) },
  }));

  it("moves a batch that died up to a bound, widens by it, and leaves the others as they are", () => {
    const died = { group: 0, stratum: 0, grafted: 100, taken: 0 };
    const { batches, widening } = tamedBatches([...usual, died], 3, 0);
    expect(batches.slice(0, 30)).toEqual(usual);
    expect(batches[30]?.taken).toBeGreaterThan(20);
    expect(batches[30]?.taken).toBeLessThan(75);
    expect(widening).toBeCloseTo((31 / 30) ** 2, 12);
  });

  it("leaves batches alone of which none is far, and strata in which nothing took", () => {
    const none = { group: 1, stratum: 1, grafted: 50, taken: 0 };
    const { batches, widening } = tamedBatches([...usual, none], 3, 0);
    expect(batches).toEqual([...usual, none]);
    expect(widening).toBe(1);
    expect(tamedBatches([], 0, 0)).toMatchObject({ batches: [], widening: 1 });
  });
});

describe("fairComparison", () => {
  it("has a range that leaves out the rate of all just where the plain test would", () => {
    const batches: ComparedBatch[] = Array.from({ length: 24 }, (_, index) => ({
      ...{ group: index % 2, stratum: index % 3, grafted: 100 },
      taken: (index % 2 === 0 ? 70 : 77) + ((index * 5) % 9),
    }));
    const overall = batches.reduce((sum, { taken }) => sum + taken, 0) / 2400;
    const outside = (level: number) => {
      const [first] = fairComparison(batches, 2, level);
      return (first?.range?.high as number) < overall;
    };
    const levels = Array.from({ length: 98 }, (_, index) => (index + 1) / 100);
    const changes = levels.filter(
      (level, index) => index > 0 && outside(level) !== outside(levels[index - 1] as number),
    );
    expect(outside(0.01)).toBe(true);
    expect(changes.length).toBeLessThanOrEqual(1);
  });

  it("does not depend on the order of batches, and leaves its input as it was", () => {
    const batches: ComparedBatch[] = Array.from({ length: 20 }, (_, index) => ({
      ...{
        group: index % 4,
        stratum: index % 2,
        grafted: 80 + index,
        taken: 50 + ((index * 13) % 17),
      },
    }));
    const before = JSON.stringify(batches);
    const shown = (order: readonly ComparedBatch[]) =>
      fairComparison(order, 4, 0.95).map(({ evenedRate, range, reading }) => [
        ...[evenedRate?.toFixed(9), range?.low.toFixed(9), range?.high.toFixed(9), reading],
      ]);
    expect(shown([...batches].reverse())).toEqual(shown(batches));
    expect(JSON.stringify(batches)).toBe(before);
  });
});
