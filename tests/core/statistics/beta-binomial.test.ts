import { describe, expect, it } from "vitest";
import {
  betaBinomialProbabilities,
  betaBinomialQuantiles,
} from "../../../src/core/statistics/beta-binomial";
import { betaOfMoments, product, WHOLE } from "../../../src/core/statistics/beta-moments";
import { betaQuantile } from "../../../src/core/statistics/beta-quantile";
import { fixture } from "../../support/fixtures";

interface BetaCase {
  readonly a: number;
  readonly b: number;
  readonly mean: number;
  readonly variance: number;
  readonly quantiles: readonly number[];
}
interface CountCase extends BetaCase {
  readonly trials: number;
  readonly cumulatedAtQuantiles: readonly number[];
  readonly massAtQuantiles: readonly number[];
}
type Probabilities = { readonly probabilities: readonly number[] };
const counts = fixture<Probabilities, { cases: readonly CountCase[] }>("beta-binomial");
const shares = fixture<Probabilities, { cases: readonly BetaCase[] }>("beta-quantiles");

describe("beta-binomial against R 4.2.2 (tests/fixtures/beta-binomial)", () => {
  const { probabilities } = counts.data;
  const summed = counts.expected.cases.filter(({ trials }) => trials <= 5000);
  const matched = counts.expected.cases.filter(({ trials }) => trials > 5000);

  it.each(summed)("quantiles of $trials plants, a $a, b $b, are R's", (one) => {
    expect(betaBinomialQuantiles(one.trials, one, probabilities)).toEqual(one.quantiles);
  });

  it.each(summed)("chances of $trials plants, a $a, b $b, are R's", (one) => {
    const chances = betaBinomialProbabilities(one.trials, one);
    one.quantiles.forEach((count, index) => {
      expect(chances[count]).toBeCloseTo(one.massAtQuantiles[index] as number, 11);
      const below = chances.slice(0, count + 1).reduce((sum, chance) => sum + chance, 0);
      expect(below).toBeCloseTo(one.cumulatedAtQuantiles[index] as number, 9);
    });
  });

  // Above 5,000 plants a beta stands in: within one plant or 0.5 % of the count.
  it.each(matched)("quantiles of $trials plants, a $a, b $b, are within 0.5 % of R's", (one) => {
    betaBinomialQuantiles(one.trials, one, probabilities).forEach((count, index) => {
      const exact = one.quantiles[index] as number;
      expect(Math.abs(count - exact)).toBeLessThanOrEqual(Math.max(1, 0.005 * exact));
    });
  });
});

describe("beta-binomial", () => {
  it("has chances that add up to 1 and give the mean and variance of its formulas", () => {
    for (const [plants, a, b] of [
      [1, 0.3, 4],
      [17, 0.5, 0.5],
      [400, 30, 10],
      [5000, 2, 900],
    ] as const) {
      const chances = betaBinomialProbabilities(plants, { a, b });
      let [total, mean, square] = [0, 0, 0];
      chances.forEach((chance, count) => {
        total += chance;
        mean += chance * count;
        square += chance * count * count;
      });
      const variance = (plants * a * b * (a + b + plants)) / ((a + b) ** 2 * (a + b + 1));
      expect(total).toBeCloseTo(1, 9);
      expect(mean / ((plants * a) / (a + b))).toBeCloseTo(1, 8);
      expect((square - mean * mean) / variance).toBeCloseTo(1, 6);
    }
  });

  it("is even on 0 to n where the share is even", () => {
    const chances = [...betaBinomialProbabilities(9, { a: 1, b: 1 })];
    for (const chance of chances) expect(chance).toBeCloseTo(0.1, 14);
  });

  it("stays within the plants at chances of 0 and 1", () => {
    expect(betaBinomialQuantiles(50, { a: 3, b: 1 }, [0, 1])).toEqual([0, 50]);
    expect(betaBinomialQuantiles(9000, { a: 3, b: 1 }, [0, 1])).toEqual([0, 9000]);
    expect(betaBinomialQuantiles(0, { a: 3, b: 1 }, [0.1, 0.9])).toEqual([0, 0]);
  });

  it("goes over from sums to the beta without a jump at 5,000 plants", () => {
    const share = { a: 12, b: 4 };
    const chances = [0.1, 0.5, 0.9];
    const summed = betaBinomialQuantiles(5000, share, chances);
    betaBinomialQuantiles(5001, share, chances).forEach((count, index) => {
      expect(Math.abs(count - (summed[index] as number))).toBeLessThanOrEqual(2);
    });
  });
});

describe("beta quantiles against R 4.2.2 qbeta (tests/fixtures/beta-quantiles)", () => {
  it.each(shares.expected.cases)("a $a, b $b", (one) => {
    one.quantiles.forEach((quantile, index) => {
      const share = betaQuantile(one, shares.data.probabilities[index] as number);
      // A share's own digits: 1e-9 is a thousandth of a plant in a million.
      expect(Math.abs(share - quantile)).toBeLessThanOrEqual(1e-9);
    });
  });

  it("end at 0 and 1", () => {
    expect([betaQuantile({ a: 2, b: 3 }, 0), betaQuantile({ a: 2, b: 3 }, 1)]).toEqual([0, 1]);
  });
});

describe("beta of moments", () => {
  it.each(shares.expected.cases)("takes back the a $a and b $b of R's moments", (one) => {
    const beta = betaOfMoments({ mean: one.mean, meanSquare: one.variance + one.mean ** 2 });
    expect((beta?.a ?? 0) / one.a).toBeCloseTo(1, 6);
    expect((beta?.b ?? 0) / one.b).toBeCloseTo(1, 6);
  });

  it("is none where the share is certain, or spreads wider than any share can", () => {
    expect(betaOfMoments(WHOLE)).toBeNull();
    expect(betaOfMoments({ mean: 0.7, meanSquare: 0.49 })).toBeNull();
    expect(betaOfMoments({ mean: 0, meanSquare: 0 })).toBeNull();
    expect(betaOfMoments({ mean: 0.5, meanSquare: 0.5 })).toBeNull();
  });
});

describe("product of shares", () => {
  it("has the moments that the exact sums over two lists of shares give", () => {
    const one = [0.2, 0.9, 0.7];
    const other = [0.5, 1];
    const moments = (list: number[]) => ({
      mean: list.reduce((sum, share) => sum + share, 0) / list.length,
      meanSquare: list.reduce((sum, share) => sum + share * share, 0) / list.length,
    });
    const both = moments(one.flatMap((a) => other.map((b) => a * b)));
    const multiplied = product(moments(one), moments(other));
    expect(multiplied.mean).toBeCloseTo(both.mean, 14);
    expect(multiplied.meanSquare).toBeCloseTo(both.meanSquare, 14);
  });

  it("is unchanged by the whole", () => {
    const share = { mean: 0.75, meanSquare: 0.6 };
    expect(product(share, WHOLE)).toEqual(share);
    expect(product(WHOLE, share)).toEqual(share);
  });
});
