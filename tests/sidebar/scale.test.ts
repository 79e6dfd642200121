import { describe, expect, it } from "vitest";
import { scale } from "../../src/sidebar/charts/scale";

describe("a scale", () => {
  it("places the ends at the edges, and all between in proportion", () => {
    const { at, between } = scale({ most: 8 });
    expect([0, 2, 8].map(at)).toEqual(["0%", "25%", "100%"]);
    expect(between(2, 8)).toBe("75%");
  });

  it("leaves room, and runs upwards, where it is told to", () => {
    const { at, between } = scale({ most: 1, from: 94, to: 6 });
    expect([0, 0.5, 1].map(at)).toEqual(["94%", "50%", "6%"]);
    expect([between(0.25, 0.75), between(0.75, 0.25)]).toEqual(["44%", "44%"]);
  });

  it("begins at another value than 0 where it is told to", () => {
    expect(scale({ least: 10, most: 20 }).at(12.5)).toBe("25%");
  });

  it("keeps what lies beyond an end at that end", () => {
    const { at, between } = scale({ most: 8 });
    expect([-1, 9].map(at)).toEqual(["0%", "100%"]);
    expect(between(4, 16)).toBe("50%");
  });

  it("is told to a hundredth of a percent", () => {
    expect(scale({ most: 3 }).at(1)).toBe("33.33%");
  });
});
