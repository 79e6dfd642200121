import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  logLikelihoods,
  type ShareCounts,
  shareCounts,
} from "../../../src/core/statistics/share-counts";
import { logChoose, PLATE_GROUPS, plainLogLikelihood } from "./plates";

/** The index of the top of a function with one top, by halving by the golden ratio. */
function logLikelihood(counts: ShareCounts, mean: number, correlation: number): number {
  return logLikelihoods(counts, Float64Array.of(mean), correlation)[0] as number;
}

function topOf(f: (x: number) => number, from: number, to: number): number {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [from, to];
  while (high - low > 1e-9) {
    const [left, right] = [high - golden * (high - low), low + golden * (high - low)];
    if (f(left) > f(right)) high = right;
    else low = left;
  }
  return (low + high) / 2;
}

describe.each(PLATE_GROUPS)(
  "published counts: Crowder (1978), Appl. Statist. 27:34-37, $name, fitted by R 4.2.2 (VGAM 1.1.7)",
  ({ plates, fit }) => {
    const counts = shareCounts(plates);
    const coefficients = plates.reduce((sum, { kept, of }) => sum + logChoose(of, kept), 0);

    it("has R's log-likelihood at R's maximum", () => {
      expect(logLikelihood(counts, fit.mean, fit.rho) + coefficients).toBeCloseTo(
        fit.logLikelihood,
        4,
      );
    });

    it("is highest at R's mean and correlation, to the digits that two fits agree on", () => {
      const bestMean = (rho: number) =>
        topOf((mean) => logLikelihood(counts, mean, rho), 0.01, 0.99);
      const rho = topOf((one) => logLikelihood(counts, bestMean(one), one), 0.0005, 0.5);
      // SOURCE.md: VGAM's and the direct fit differ by up to 1e-5.
      expect(Math.abs(rho - fit.rho)).toBeLessThan(1e-5);
      expect(Math.abs(bestMean(rho) - fit.mean)).toBeLessThan(1e-5);
    });

    it("falls away on every side of it", () => {
      const top = logLikelihood(counts, fit.mean, fit.rho);
      for (const step of [0.02, 0.1, 0.5]) {
        for (const [mean, rho] of [
          [fit.mean * (1 + step * 0.2), fit.rho],
          [fit.mean * (1 - step * 0.2), fit.rho],
          [fit.mean, fit.rho * (1 + step)],
          [fit.mean, fit.rho * (1 - step)],
        ] as const) {
          expect(logLikelihood(counts, mean, rho)).toBeLessThan(top);
        }
      }
    });
  },
);

describe("logLikelihoods", () => {
  const plate = fc
    .integer({ min: 1, max: 2000 })
    .chain((of) => fc.integer({ min: 0, max: of }).map((kept) => ({ kept, of })));

  it("is the sum over plates term by term, to a millionth of what is added up", () => {
    fc.assert(
      fc.property(
        fc.array(plate, { minLength: 1, maxLength: 12 }),
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        fc.double({ min: 0.002, max: 0.5, noNaN: true }),
        (plates, mean, rho) => {
          const { sum, size } = plainLogLikelihood(plates, mean, rho);
          const gathered = logLikelihood(shareCounts(plates), mean, rho);
          expect(Math.abs(gathered - sum)).toBeLessThan(1e-6 * size + 1e-9);
        },
      ),
      { numRuns: 200 },
    );
  });

  it("does not mind the order of the batches, and adds up over parts of them", () => {
    fc.assert(
      fc.property(fc.array(plate, { minLength: 2, maxLength: 12 }), (plates) => {
        const at = (some: typeof plates) => logLikelihood(shareCounts(some), 0.7, 0.05);
        expect(at([...plates].reverse())).toBe(at(plates));
        const parts = at(plates.slice(0, 1)) + at(plates.slice(1));
        const { size } = plainLogLikelihood(plates, 0.7, 0.05);
        expect(Math.abs(parts - at(plates))).toBeLessThan(1e-6 * size);
      }),
      { numRuns: 100 },
    );
  });

  it("is nothing without batches", () => {
    expect(logLikelihood(shareCounts([]), 0.7, 0.05)).toBe(0);
  });

  it("needs little room for many batches and for large ones", () => {
    const many = shareCounts(
      Array.from({ length: 5000 }, (_, batch) => ({ kept: batch % 300, of: 300 })),
    );
    expect(many.batches).toBe(5000);
    for (const list of [many.kept, many.lost, many.all])
      expect(list.weights.length).toBeLessThan(60);
    const large = shareCounts([{ kept: 90_000, of: 100_000 }]);
    for (const list of [large.kept, large.lost, large.all])
      expect(list.weights.length).toBeLessThan(120);
  });
});
