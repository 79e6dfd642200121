import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { betaBinomialRange } from "../../../src/core/statistics/beta-binomial";
import { nearestEnds } from "../../../src/core/statistics/nearest-ends";

const added = (chances: readonly number[]) => chances.reduce((sum, chance) => sum + chance, 0);

/** Chances that add up to 1, some of them 0. */
const distribution = fc
  .array(fc.integer({ min: 0, max: 100 }), { minLength: 1, maxLength: 40 })
  .filter((weights) => added(weights) > 0)
  .map((weights) => weights.map((weight) => weight / added(weights)));
const sides = fc.constantFrom(0.025, 0.1, 0.25, 0.4);

describe("the ends of a range", () => {
  it.each([
    // A tenth each: with a tenth outside on both sides the ends are the second and the ninth.
    [Array<number>(10).fill(0.1), 0.1, [1, 4, 8]],
    [Array<number>(10).fill(0.1), 0.14, [1, 4, 8]],
    [Array<number>(10).fill(0.1), 0.16, [2, 4, 7]],
    [[1], 0.1, [0, 0, 0]],
    // A place without a chance is no end.
    [[0, 0, 1, 0], 0.1, [2, 2, 2]],
    [[0.9, 0, 0, 0.1], 0.1, [0, 0, 0]],
    [[0.1, 0, 0, 0.9], 0.1, [3, 3, 3]],
    [[0.5, 0.5], 0.1, [0, 0, 1]],
    [[0.04, 0.92, 0.04], 0.1, [1, 1, 1]],
    [[0.04, 0.92, 0.04], 0.01, [0, 1, 2]],
  ])("of %j with %d outside on each side", (chances, side, expected) => {
    const { low, middle, high } = nearestEnds(chances, side);
    expect([low, middle, high]).toEqual(expected);
  });

  it("leave outside what comes nearest to what should be, unless the middle stands in the way", () => {
    fc.assert(
      fc.property(distribution, sides, (chances, side) => {
        const { low, middle, high } = nearestEnds(chances, side);
        const below = (index: number) => added(chances.slice(0, index));
        const above = (index: number) => added(chances.slice(index + 1));
        chances.forEach((_, index) => {
          if (low < middle) {
            expect(Math.abs(below(low) - side)).toBeLessThanOrEqual(
              Math.abs(below(index) - side) + 1e-9,
            );
          }
          if (high > middle) {
            expect(Math.abs(above(high) - side)).toBeLessThanOrEqual(
              Math.abs(above(index) - side) + 1e-9,
            );
          }
        });
        expect(below(middle + 1)).toBeGreaterThan(0.5 - 1e-8);
        expect(below(middle)).toBeLessThan(0.5 + 1e-8);
        expect(low <= middle && middle <= high).toBe(true);
      }),
      { numRuns: 500 },
    );
  });
});

describe("a range of plants", () => {
  it("holds as often as it says, as nearly as whole plants allow", () => {
    // All ways alike: a beta of 1 and 1 makes each number of plants as likely.
    for (const [plants, level, ends] of [
      [9, 0.8, [1, 4, 8]],
      [19, 0.8, [2, 9, 17]],
      [99, 0.5, [25, 49, 74]],
    ] as const) {
      const { fewest, likely, most } = betaBinomialRange(plants, { a: 1, b: 1 }, level);
      expect([fewest, likely, most]).toEqual(ends);
    }
  });

  it("of no plants is none", () => {
    expect(betaBinomialRange(0, { a: 3, b: 2 }, 0.8)).toEqual({ fewest: 0, likely: 0, most: 0 });
  });

  it("goes on without a jump where plants are too many to be told one by one", () => {
    const share = (plants: number) => {
      const { fewest, likely, most } = betaBinomialRange(plants, { a: 30, b: 10 }, 0.8);
      return [fewest, likely, most].map((count) => count / plants);
    };
    const [few, many] = [share(5000), share(5001)];
    few.forEach((end, at) => {
      expect(Math.abs(end - (many[at] as number))).toBeLessThan(0.001);
    });
  });
});
