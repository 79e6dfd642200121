import { describe, expect, it } from "vitest";
import { clearCorner } from "../../src/sidebar/takes/fair/clear-corner";

describe("the corner for words in a chart", () => {
  it.each([
    [
      "at the foot, at the right, where the course is as far everywhere",
      [0.6, 0.6],
      "right",
      "foot",
    ],
    ["at the left, where the course falls at the end", [0.7, 0.7, 0.7, 0.1], "left", "foot"],
    ["at the top, where the course is low", [0.1, 0.1, 0.1], "right", "top"],
    ["at the top left, where it then climbs", [0.1, 0.1, 0.1, 0.8], "left", "top"],
  ])("is %s", (_, rates, end, side) => {
    expect(clearCorner(rates)).toEqual({ end, side });
  });

  it("is there for one point alone, or none", () => {
    expect(clearCorner([0.7])).toEqual({ end: "right", side: "foot" });
    expect(clearCorner([])).toEqual({ end: "right", side: "foot" });
  });
});
