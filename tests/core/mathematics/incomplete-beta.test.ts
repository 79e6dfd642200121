import betainc from "@stdlib/math-base-special-betainc";
import gammaln from "@stdlib/math-base-special-gammaln";
import normalQuantileOfLibrary from "@stdlib/stats-base-dists-normal-quantile";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { incompleteBeta } from "../../../src/core/mathematics/incomplete-beta";
import { logGamma, stirlingRest } from "../../../src/core/mathematics/log-gamma";
import { normalQuantile } from "../../../src/core/mathematics/normal-quantile";

// Checked against @stdlib (Apache-2.0 and BSL-1.0), whose functions follow those of Boost and Cephes.

/** Sizes of batches and priors alike, spread evenly over their orders of magnitude. */
const size = fc.double({ min: Math.log(0.01), max: Math.log(50_000), noNaN: true }).map(Math.exp);
const share = fc.double({ min: 1e-9, max: 1 - 1e-9, noNaN: true });

describe("the incomplete beta function", () => {
  it("is the library's, wherever and for whatever sizes", () => {
    fc.assert(
      fc.property(share, size, size, (x, a, b) => {
        expect(incompleteBeta(x, a, b)).toBeCloseTo(betainc(x, a, b), 10);
      }),
      { numRuns: 2000 },
    );
  });

  it("is the library's around the mean, where most of it happens", () => {
    fc.assert(
      fc.property(size, size, fc.double({ min: -7, max: 7, noNaN: true }), (a, b, errors) => {
        const mean = a / (a + b);
        const x = mean + errors * Math.sqrt((mean * (1 - mean)) / (a + b + 1));
        fc.pre(x > 0 && x < 1);
        expect(incompleteBeta(x, a, b)).toBeCloseTo(betainc(x, a, b), 10);
      }),
      { numRuns: 2000 },
    );
  });

  it("keeps its digits far out in the tail", () => {
    for (const [x, a, b] of [
      [0.01, 30, 5],
      [0.2, 400, 300],
      [1e-6, 2, 90],
    ] as const) {
      expect(incompleteBeta(x, a, b) / betainc(x, a, b)).toBeCloseTo(1, 11);
    }
  });

  // Sums of the binomial distribution, counted out: at least 3 of 5 at one half are 16 of 32.
  it.each([
    [0.5, 3, 3, 16 / 32],
    [0.5, 1, 5, 31 / 32],
    [0.25, 2, 3, 1 - (81 + 4 * 27) / 256],
    [1 / 3, 1, 1, 1 / 3],
  ])("at %d of %d and %d is what counting gives", (x, a, b, chance) => {
    expect(incompleteBeta(x, a, b)).toBeCloseTo(chance, 14);
  });

  it("is one half at the middle of what is even, up to hundreds of thousands of plants", () => {
    for (const half of [0.5, 1, 7, 300, 20_000, 300_000]) {
      expect(incompleteBeta(0.5, half, half)).toBeCloseTo(0.5, 12);
    }
  });

  it("ends at 0 and 1", () => {
    expect([-0.1, 0, 1, 1.1].map((x) => incompleteBeta(x, 2, 3))).toEqual([0, 0, 1, 1]);
  });
});

describe("the logarithm of the gamma function", () => {
  it("is the library's", () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1e7, noNaN: true }), size, (x, y) => {
        for (const one of [x, y]) {
          const wanted = gammaln(one);
          expect(Math.abs(logGamma(one) - wanted)).toBeLessThan(3e-15 * (3 + Math.abs(wanted)));
        }
      }),
    );
  });

  it("is that of the factorials", () => {
    for (const [n, factorial] of [1, 1, 2, 6, 24, 120, 720].entries()) {
      expect(logGamma(n + 1)).toBeCloseTo(Math.log(factorial), 14);
    }
  });

  it("has a rest without a step where the series takes over", () => {
    expect(stirlingRest(10 - 1e-9) - stirlingRest(10)).toBeCloseTo(1e-9 / 1200, 12);
  });
});

describe("the normal quantile", () => {
  it.each([0.5, 0.500_001, 0.6, 0.75, 0.9, 0.95, 0.975, 0.995, 0.9995, 0.999_999, 0.1, 0.025])(
    "at %d is the library's",
    (chance) => {
      expect(normalQuantile(chance)).toBeCloseTo(normalQuantileOfLibrary(chance, 0, 1), 9);
    },
  );

  // Abramowitz and Stegun (1964), table 26.5 (from memory): 5, 2.5, 1 and 0.5 of 100 beyond.
  it.each([
    [0.95, 1.64485],
    [0.975, 1.95996],
    [0.99, 2.32635],
    [0.995, 2.57583],
  ])("at %d is %d, as in the tables", (chance, value) => {
    expect(normalQuantile(chance)).toBeCloseTo(value, 5);
  });
});
