import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  binomialChanceOfAtLeast,
  chanceOfAtLeast,
  plainStart,
  smallestStart,
} from "../../../src/core/orders/smallest-start";
import { product, WHOLE } from "../../../src/core/statistics/beta-moments";
import { fixture } from "../../support/fixtures";

interface Expected {
  readonly cases: readonly {
    readonly wanted: number;
    readonly kept: number;
    readonly assurance: number;
    readonly start: number;
    readonly chance: number;
  }[];
  readonly varying: readonly {
    readonly wanted: number;
    readonly a: number;
    readonly b: number;
    readonly assurance: number;
    readonly start: number;
    readonly chance: number;
  }[];
}
const { expected } = fixture<unknown, Expected>("smallest-start");
const fixed = (mean: number) => ({ mean, meanSquare: mean * mean });
const varying = (a: number, b: number) => ({
  mean: a / (a + b),
  meanSquare: (a * (a + 1)) / ((a + b) * (a + b + 1)),
});

describe("the smallest start against R 4.2.2 (tests/fixtures/smallest-start)", () => {
  it("is that of pbinom, qbinom and qnbinom where every batch keeps one share", () => {
    expect(expected.cases.length).toBe(144);
    for (const { wanted, kept, assurance, start, chance } of expected.cases) {
      expect([wanted, kept, assurance, smallestStart(wanted, fixed(kept), assurance)]).toEqual([
        ...[wanted, kept, assurance, Math.max(start, Math.ceil(wanted / kept - 1e-9))],
      ]);
      expect(binomialChanceOfAtLeast(wanted, start, kept)).toBeCloseTo(chance, 9);
    }
  });

  it("is that of the exact sums where batches keep shares that vary", () => {
    for (const { wanted, a, b, assurance, start, chance } of expected.varying) {
      expect(smallestStart(wanted, varying(a, b), assurance)).toBe(start);
      expect(chanceOfAtLeast(wanted, start, varying(a, b))).toBeCloseTo(chance, 9);
    }
  });
});

describe("the smallest start by hand", () => {
  it.each([
    // One plant of one half: 1 - 1/2, 1 - 1/4, 1 - 1/8.
    [1, 0.5, 0.5, 1 / 0.5],
    [1, 0.5, 0.75, 2],
    [1, 0.5, 0.8, 3],
    // Two plants of one half: of 3, 1/2; of 4, 11/16; of 5, 26/32.
    [2, 0.5, 0.8, 5],
    // All kept: no more than wanted. None wanted: none.
    [10, 1, 0.999, 10],
    [0, 0.5, 0.8, 0],
  ])("%d wanted of a share %d with chance %d is %d", (wanted, kept, chance, start) => {
    expect(smallestStart(wanted, fixed(kept), chance)).toBe(start);
  });

  it("is at least 13 for 10 wanted at 80 of 100 kept, and more for safety", () => {
    expect(plainStart(10, 0.8)).toBe(13);
    expect(smallestStart(10, fixed(0.8), 0.8)).toBe(14);
    expect(smallestStart(10, fixed(0.8), 0.1)).toBe(13);
  });

  it("does not grow by what shares lose to rounding: 9 of 0.9 are 10", () => {
    expect(plainStart(9, 0.9)).toBe(10);
    expect(plainStart(57, 0.3 * 1.9)).toBe(100);
  });

  it("is none where nothing is kept, or ten million are too few", () => {
    expect(smallestStart(1, fixed(0), 0.8)).toBeNull();
    expect(smallestStart(9_000_000, fixed(0.5), 0.8)).toBeNull();
    expect(smallestStart(10, varying(0.05, 1), 0.99)).toBeNull();
  });
});

describe("published values: the plain part", () => {
  it("is Siyag's (2014, Table 2.3) ratio of plants to start with", () => {
    const { data, expected: printed } = fixture<
      { methods: { method: string; lossesOf100: number[] }[] },
      { methods: { method: string; ratioPrinted: number }[] }
    >("siyag-2014");
    for (const { method, lossesOf100 } of data.methods) {
      const share = lossesOf100.map((loss) => fixed(1 - loss / 100)).reduce(product, WHOLE);
      const ratio = (plainStart(100_000, share.mean) as number) / 100_000;
      const print = printed.methods.find((one) => one.method === method)?.ratioPrinted as number;
      // The print cuts or rounds unevenly: 1.645 stands as 1.64.
      expect(Math.abs(ratio - print)).toBeLessThanOrEqual(0.006);
    }
  });

  it("is 40 % extra seed where 10 of 100 don't germinate, 15 are lost in the nursery, 7 in the field", () => {
    // Source: Applied Agricultural Resources (Malaysia), Cocoa: nursery practices: about 40 % extra.
    // Its own formula is a picture that can't be read; this split of the losses is ours.
    const share = [10, 15, 7].map((loss) => fixed(1 - loss / 100)).reduce(product, WHOLE);
    expect(plainStart(1000, share.mean)).toBe(1406);
  });
});

describe("the smallest start, for any order", () => {
  const wanted = fc.integer({ min: 1, max: 400 });
  const chance = fc.double({ min: 0.05, max: 0.98, noNaN: true });
  const mean = fc.double({ min: 0.3, max: 0.97, noNaN: true });
  const correlation = fc.constantFrom(0, 0.01, 0.05, 0.2);
  const shareOf = (kept: number, rho: number) => ({
    mean: kept,
    meanSquare: kept * kept + kept * (1 - kept) * rho,
  });

  it("is enough, and one plant fewer is not unless the plain division asks for it", () => {
    fc.assert(
      fc.property(wanted, chance, mean, correlation, (plants, sure, kept, rho) => {
        const share = shareOf(kept, rho);
        const start = smallestStart(plants, share, sure) as number;
        const plain = plainStart(plants, kept) as number;
        expect(start).toBeGreaterThanOrEqual(plain);
        expect(chanceOfAtLeast(plants, start, share)).toBeGreaterThanOrEqual(sure - 1e-9);
        if (start > plain) {
          expect(chanceOfAtLeast(plants, start - 1, share)).toBeLessThan(sure);
        }
      }),
      { numRuns: 200 },
    );
  });

  it("never falls when more is wanted, or to be surer, or when less is kept", () => {
    fc.assert(
      fc.property(
        ...([wanted, wanted, chance, chance, mean, mean, correlation] as const),
        (w1, w2, c1, c2, m1, m2, rho) => {
          const start = (w: number, c: number, m: number) =>
            smallestStart(w, shareOf(m, rho), c) ?? Number.POSITIVE_INFINITY;
          const [fewer, more] = [Math.min(w1, w2), Math.max(w1, w2)];
          const [unsure, sure] = [Math.min(c1, c2), Math.max(c1, c2)];
          const [less, most] = [Math.min(m1, m2), Math.max(m1, m2)];
          expect(start(more, c1, m1)).toBeGreaterThanOrEqual(start(fewer, c1, m1));
          expect(start(w1, sure, m1)).toBeGreaterThanOrEqual(start(w1, unsure, m1));
          expect(start(w1, c1, less)).toBeGreaterThanOrEqual(start(w1, c1, most));
        },
      ),
      { numRuns: 200 },
    );
  });
});
