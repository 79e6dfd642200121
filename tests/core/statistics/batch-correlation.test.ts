import { describe, expect, it } from "vitest";
import { additiveFit } from "../../../src/core/statistics/additive-fit";
import { BELIEVED, batchCorrelation } from "../../../src/core/statistics/batch-correlation";
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
    // 0.25 × 99 × 2 = 49.5; 1.5 ÷ 49.5 = 0.030303. Believed: 4 batches at 0.05.
    const found = batchCorrelation([fitted(60), fitted(40)]);
    expect(found.own).toBeCloseTo(1.5 / 49.5, 12);
    expect(found.degreesOfFreedom).toBeCloseTo(2 + BELIEVED.worth, 12);
    expect(found.correlation).toBeCloseTo((2 * (1.5 / 49.5) + 4 * 0.05) / 6, 12);
  });

  it("is what is believed where there is nothing to learn from, and never below 0", () => {
    expect(batchCorrelation([]).correlation).toBe(BELIEVED.correlation);
    expect(batchCorrelation([fitted(50, 100, 0.5, 1)]).correlation).toBe(BELIEVED.correlation);
    const steady = batchCorrelation(Array.from({ length: 40 }, () => fitted(50)));
    expect(steady.own).toBe(0);
    expect(steady.correlation).toBeLessThan(BELIEVED.correlation / 5);
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
    const { own } = batchCorrelation(additiveFit(batches, 4));
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
    const { batches, widening } = tamedBatches([...usual, died], 3);
    expect(batches.slice(0, 30)).toEqual(usual);
    expect(batches[30]?.taken).toBeGreaterThan(20);
    expect(batches[30]?.taken).toBeLessThan(75);
    expect(widening).toBeCloseTo((31 / 30) ** 2, 12);
  });

  it("leaves batches alone of which none is far, and strata in which nothing took", () => {
    const none = { group: 1, stratum: 1, grafted: 50, taken: 0 };
    const { batches, widening } = tamedBatches([...usual, none], 3);
    expect(batches).toEqual([...usual, none]);
    expect(widening).toBe(1);
    expect(tamedBatches([], 0)).toMatchObject({ batches: [], widening: 1 });
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
