import betainc from "@stdlib/math-base-special-betainc";
import { describe, expect, it } from "vitest";
import { chanceOfRange } from "../../../src/core/statistics/range-by-chance";
import { fixture } from "../../support/fixtures";

/** The binomial distribution by the incomplete beta function of a general library (@stdlib). */
function chancesOf(size: number, share: number): number[] {
  const upTo = (count: number) =>
    count < 0 ? 0 : count >= size ? 1 : betainc(1 - share, size - count, count + 1);
  return Array.from({ length: size + 1 }, (_, count) => upTo(count) - upTo(count - 1));
}

/** Every outcome of the samples, one by one: the chance of those that are at least so far apart. */
function byEnumeration(samples: number, size: number, share: number, range: number): number {
  const chances = chancesOf(size, share);
  const beyond = (left: number, least: number, most: number, chance: number): number =>
    left === 0
      ? most - least >= range
        ? chance
        : 0
      : chances.reduce(
          (sum, one, count) =>
            sum + beyond(left - 1, Math.min(least, count), Math.max(most, count), chance * one),
          0,
        );
  return beyond(samples, size, 0, 1);
}

describe("chanceOfRange", () => {
  it.each([
    [[40, 31], 50],
    [[3, 0], 4],
    [[20, 12, 17], 25],
    [[1, 0, 3], 30],
    [[9, 4, 8, 10], 12],
    [[12, 12, 12, 11], 12],
  ])("is that of all outcomes counted one by one: %j of %d", (counts, size) => {
    const share = counts.reduce((sum, one) => sum + one, 0) / (counts.length * size);
    const range = Math.max(...counts) - Math.min(...counts);
    expect(chanceOfRange(counts, size)).toBeCloseTo(
      byEnumeration(counts.length, size, share, range),
      10,
    );
  });

  it("is 1 where nothing differs, and none where everything does", () => {
    expect(chanceOfRange([7, 7, 7], 10)).toBe(1);
    expect(chanceOfRange([0, 1000], 1000)).toBeLessThan(1e-12);
    expect(chanceOfRange([500_000_000, 499_990_000], 1_000_000_000)).toBeGreaterThan(0.5);
  });
});

describe("published values: 7 CFR 201.55(a), reckoned anew", () => {
  const { largestRange } = fixture<
    unknown,
    {
      readonly largestRange: readonly {
        readonly meanHigh: number;
        readonly fourReplicates: number;
        readonly twoReplicates: number | null;
      }[];
    }
  >("us-7cfr-201-55").expected;

  /** The largest range that chance reaches or exceeds in 1 of 40 or more. */
  function largestByChance(samples: 2 | 4, mean: number): number {
    for (let range = 1; ; range += 1) {
      // Two of them as far apart as they are, the others between: the mean stays.
      const low = mean - Math.floor(range / 2);
      const counts = [low, low + range, ...(samples === 4 ? [mean, mean] : [])];
      const within = counts.map((one) => Math.max(0, one));
      if (Math.max(...within) > 100 || chanceOfRange(within, 100) < 1 / 40) return range - 1;
    }
  }

  it.each(largestRange.filter(({ meanHigh }) => meanHigh < 97))(
    "at a mean of $meanHigh % comes within one seed of what is allowed",
    ({ meanHigh, fourReplicates, twoReplicates }) => {
      expect(Math.abs(largestByChance(4, meanHigh) - fourReplicates)).toBeLessThanOrEqual(1);
      const two = twoReplicates as number;
      expect(Math.abs(largestByChance(2, meanHigh) - two)).toBeLessThanOrEqual(1);
    },
  );
});
