import { describe, expect, it } from "vitest";
import { clearPlace } from "../../src/sidebar/takes/fair/clear-place";

describe("the words of a level line", () => {
  it.each([
    ["above at the right, where the course is far everywhere", [0.1, 0.1, 0.1], "right", "above"],
    ["below, where the course runs a little above", [0.8, 0.8, 0.8, 0.8], "right", "below"],
    ["at the left, where the course crosses at the right", [0.1, 0.1, 0.9, 0.1], "left", "above"],
    ["above at the left, where the course ends near", [0.2, 0.2, 0.8, 0.8], "left", "above"],
    ["below at the left, where it begins above", [0.8, 0.8, 0.75, 0.6], "left", "below"],
  ])("stand %s", (_, rates, end, side) => {
    expect(clearPlace(rates, 0.7)).toEqual({ end, side });
  });

  it("have a place where there is one point alone, or none", () => {
    expect(clearPlace([0.7], 0.7)).toEqual({ end: "right", side: "above" });
    expect(clearPlace([], 0.7)).toEqual({ end: "right", side: "above" });
  });
});
