import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { largestRemainder } from "../../../src/core/mathematics/largest-remainder";

describe("sharing out by largest remainder", () => {
  it("gives what is left to those that lost most by rounding down", () => {
    // By hand: 10 seats by 47, 16, 15.8, 12, 6.1 and 3.1 of 100 are 4.7, 1.6, 1.58, 1.2, 0.61, 0.31; rounded
    // down 4, 1, 1, 1, 0, 0, and of the three left one each goes to 0.7, 0.61 and 0.6.
    expect(largestRemainder(10, [47, 16, 15.8, 12, 6.1, 3.1])).toEqual([5, 2, 1, 1, 1, 0]);
  });

  it("gives the first of two alike, nothing to a weight of 0, and all alike where all are 0", () => {
    expect(largestRemainder(1, [1, 1])).toEqual([1, 0]);
    expect(largestRemainder(3, [0, 1, 0])).toEqual([0, 3, 0]);
    expect(largestRemainder(5, [0, 0])).toEqual([3, 2]);
    expect(largestRemainder(0, [])).toEqual([]);
  });

  it("adds up, and is never a whole one away from what is due", () => {
    const weights = fc.array(fc.double({ min: 0, max: 1e6, noNaN: true }), { minLength: 1 });
    fc.assert(
      fc.property(fc.nat(100_000), weights, (whole, given) => {
        const shares = largestRemainder(whole, given);
        const sum = given.reduce((total, weight) => total + weight, 0);
        expect(shares.reduce((total, share) => total + share, 0)).toBe(whole);
        shares.forEach((share, at) => {
          const due = sum > 0 ? (whole * (given[at] as number)) / sum : whole / given.length;
          expect(Math.abs(share - due)).toBeLessThan(1 + 1e-6);
        });
      }),
    );
  });
});
