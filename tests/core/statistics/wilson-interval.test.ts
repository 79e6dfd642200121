import { describe, expect, it } from "vitest";
import { wilsonInterval } from "../../../src/core/statistics/wilson-interval";
import { faultOf } from "../../support/fault-of";
import { fixture } from "../../support/fixtures";

interface WilsonCase {
  readonly successes: number;
  readonly trials: number;
  readonly lower: number;
  readonly upper: number;
  readonly lowerPrinted: string;
  readonly upperPrinted: string;
}
const newcombe = fixture<{ level: number }, { cases: readonly WilsonCase[] }>("newcombe-1998");

// The printed limits were recalled and are R's to every digit: tests/fixtures/newcombe-1998/SOURCE.md.
describe("published values: Newcombe (1998), Statist. Med. 17:857-872, Table I, method 3", () => {
  const { level } = newcombe.data;
  it.each(newcombe.expected.cases)("$successes of $trials", (one) => {
    const { low, high } = wilsonInterval({ ...one, level });
    expect([low.toFixed(4), high.toFixed(4)]).toEqual([one.lowerPrinted, one.upperPrinted]);
    // R 4.2.2 prop.test(correct = FALSE) in the same fixture, to 12 digits.
    expect(low).toBeCloseTo(one.lower, 12);
    expect(high).toBeCloseTo(one.upper, 12);
  });

  it("are the four", () => {
    expect(newcombe.expected.cases.map(({ successes, trials }) => [successes, trials])).toEqual([
      [81, 263],
      [15, 148],
      [0, 20],
      [1, 29],
    ]);
  });
});

describe("counts of Pimentel-Gomes (2009) p. 382, 180 and 150 of 200 grafts took, limits by arithmetic", () => {
  it.each([
    [180, "85.06", "93.43"],
    [150, "68.57", "80.49"],
  ])("%i of 200 is %s to %s of 100", (successes, lower, upper) => {
    const { low, high } = wilsonInterval({ successes, trials: 200, level: 0.95 });
    expect([(100 * low).toFixed(2), (100 * high).toFixed(2)]).toEqual([lower, upper]);
  });
});

describe("wilsonInterval", () => {
  it("holds the shares whose score test does not refuse the count, and no others", () => {
    // The limits are where (x - n p)² = z² n p (1 - p): Wilson's own definition.
    for (const [successes, trials, level] of [
      [3, 40, 0.8],
      [17, 25, 0.95],
      [499, 500, 0.99],
    ] as const) {
      const { low, high } = wilsonInterval({ successes, trials, level });
      const z = { 0.8: 1.2815515655446004, 0.95: 1.959963984540054, 0.99: 2.5758293035489004 };
      for (const share of [low, high]) {
        const score = (successes - trials * share) ** 2 / (trials * share * (1 - share));
        expect(score).toBeCloseTo(z[level] ** 2, 9);
      }
    }
  });

  it("mirrors when successes and failures change places", () => {
    const one = wilsonInterval({ successes: 7, trials: 30, level: 0.9 });
    const other = wilsonInterval({ successes: 23, trials: 30, level: 0.9 });
    expect(one.low).toBeCloseTo(1 - other.high, 14);
    expect(one.high).toBeCloseTo(1 - other.low, 14);
  });

  it("ends at 0 and 1 exactly where none or all succeed", () => {
    expect(wilsonInterval({ successes: 0, trials: 7, level: 0.95 }).low).toBe(0);
    expect(wilsonInterval({ successes: 7, trials: 7, level: 0.95 }).high).toBe(1);
  });

  it("takes trials that are made fewer, down to parts of a plant", () => {
    const { low, high } = wilsonInterval({ successes: 0.25, trials: 0.5, level: 0.95 });
    expect(low).toBeGreaterThan(0);
    expect(high).toBeLessThan(1);
  });

  it.each([0, 1, 3, -0.5, Number.NaN])("refuses a level of %s", (level) => {
    expect(faultOf(() => wilsonInterval({ successes: 1, trials: 2, level }))).toEqual({
      code: "level-out-of-range",
      argument: "level",
      found: level,
    });
  });

  it.each([
    [1, 0],
    [-1, 5],
    [Number.NaN, 5],
    [1, Number.NaN],
  ])("refuses %s of %s", (successes, trials) => {
    expect(faultOf(() => wilsonInterval({ successes, trials, level: 0.9 }))).toEqual({
      code: "no-plants",
      successes,
      trials,
    });
  });

  it("refuses more than all", () => {
    expect(faultOf(() => wilsonInterval({ successes: 6, trials: 5, level: 0.9 }))).toEqual({
      code: "more-taken-than-grafted",
      taken: 6,
      grafted: 5,
    });
  });
});
