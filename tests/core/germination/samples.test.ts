import { describe, expect, it } from "vitest";
import { comparedSamples } from "../../../src/core/germination/samples";
import { fixture } from "../../support/fixtures";

interface RangeRow {
  readonly meanHigh: number;
  readonly meanLow: number;
  readonly fourReplicates: number | null;
  readonly twoReplicates: number | null;
}
const { expected } = fixture<unknown, { readonly largestRange: readonly RangeRow[] }>(
  "us-7cfr-201-55",
);

/** Samples of 100 seeds with a mean (to the nearest whole number) and a range; null where none can be. */
function samplesWith(count: 2 | 4, mean: number, range: number): number[] | null {
  for (let low = 0; low + range <= 100; low += 1) {
    const high = low + range;
    if (count === 2) {
      if (Math.round((low + high) / 2) === mean) return [low, high];
      continue;
    }
    for (let third = low; third <= high; third += 1) {
      for (let fourth = third; fourth <= high; fourth += 1) {
        if (Math.round((low + high + third + fourth) / 4) === mean) {
          return [low, third, fourth, high];
        }
      }
    }
  }
  return null;
}

const CASES = expected.largestRange.flatMap(({ meanHigh, meanLow, ...ranges }) =>
  [meanHigh, meanLow].flatMap((mean) => [
    { count: 4 as const, mean, allowed: ranges.fourReplicates },
    { count: 2 as const, mean, allowed: ranges.twoReplicates },
  ]),
);

describe("published values: 7 CFR 201.55(a), largest range between samples of 100 seeds", () => {
  it.each(CASES)("$count samples with the mean $mean: $allowed", ({ count, mean, allowed }) => {
    const samples = String(count);
    if (allowed === null) {
      const some = samplesWith(count, mean, 1) ?? samplesWith(count, mean, 2);
      expect(comparedSamples(some as number[], 100 * count)).toMatchObject({
        code: "chance-agrees",
        samples: count,
      });
      return;
    }
    const within = samplesWith(count, mean, allowed);
    expect(within).not.toBeNull();
    expect(comparedSamples(within as number[], 100 * count)).toEqual({
      code: "agree",
      samples,
      range: allowed,
      mean,
      allowed,
    });
    const beyond = samplesWith(count, mean, allowed + 1);
    // Near 0 and 100 no samples can differ by more.
    if (beyond === null) return;
    expect(comparedSamples(beyond, 100 * count)).toEqual({
      code: "differ",
      samples,
      range: allowed + 1,
      mean,
      allowed,
    });
  });

  it("can be overstepped at nearly every mean, or little was shown", () => {
    const cases = CASES.filter(({ allowed }) => allowed !== null);
    const overstepped = cases.filter(
      ({ count, mean, allowed }) => samplesWith(count, mean, (allowed as number) + 1) !== null,
    );
    expect(overstepped.length).toBeGreaterThan(0.9 * cases.length);
  });
});

describe("comparedSamples", () => {
  it("does not mind the order of the samples", () => {
    expect(comparedSamples([95, 88, 91, 90], 400)).toEqual(comparedSamples([88, 90, 91, 95], 400));
  });

  it.each([[[90]], [[]]])("says nothing of %j: nothing to compare", (germinated) => {
    expect(comparedSamples(germinated, 100)).toBeNull();
  });

  it("does not hold the published ranges to samples of another size or number", () => {
    expect(comparedSamples([40, 20], 100)).toMatchObject({ code: "chance-differs", samples: 2 });
    expect(comparedSamples([40, 36], 100)).toMatchObject({ code: "chance-agrees", samples: 2 });
    expect(comparedSamples([90, 91, 92], 300)).toMatchObject({ code: "chance-agrees", samples: 3 });
    expect(comparedSamples([90, 91, 70], 300)).toMatchObject({
      code: "chance-differs",
      samples: 3,
    });
  });

  it("says that samples of which nobody knows the size can't be compared", () => {
    expect(comparedSamples([40, 38, 41, 36], 150)).toEqual({
      code: "uneven",
      samples: 4,
      sown: 150,
    });
    // All in the first: it can't have held a fourth of them.
    expect(comparedSamples([150, 0], 200)).toEqual({ code: "uneven", samples: 2, sown: 200 });
  });

  it.each([
    [[70, 71], 71],
    [[70, 70], 70],
    [[50, 50], 50],
    [[0, 0], 0],
    [[100, 100], 100],
  ])("judges %j", (germinated, mean) => {
    const known =
      mean === 71
        ? { code: "agree", allowed: 14, samples: "2" }
        : { code: "chance-agrees", oneOf: 1 };
    expect(comparedSamples(germinated, 200)).toMatchObject(known);
  });
});
