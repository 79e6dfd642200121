import { describe, expect, it } from "vitest";
import { addUp, bought, measureOf } from "../../../src/core/amounts";

describe("units", () => {
  // International yard and pound agreement (1959): a yard is 0.9144 m, a pound 0.453 592 37 kg; NIST Handbook
  // 44, appendix C: a foot is a third of a yard, an inch a twelfth of a foot, a gallon 231 cubic inches; Weights
  // and Measures Act 1985 (United Kingdom): a gallon is 4.546 09 l. All from memory.
  it.each([
    ["in", "mm", (0.9144 / 36) * 1000],
    ["ft", "m", 0.9144 / 3],
    ["gal", "ml", 231 * (91.44 / 36) ** 3],
    ["imp gal", "l", 4.54609],
    ["lb", "kg", 0.45359237],
    ["inches", "in", 1],
    ["lbs", "lb", 1],
  ])("1 %s is so many %s", (unit, other, times) => {
    expect(measureOf(unit).kind).toBe(measureOf(other).kind);
    expect(measureOf(unit).size / measureOf(other).size).toBeCloseTo(times, 9);
  });
});

describe("amounts", () => {
  const strip = (amount: number, unit: string) => ({ item: "Strip", amount, unit });

  it("are added up across units of one kind, in the unit that came first", () => {
    const [sum, ...more] = addUp([strip(30, "in"), { ...strip(38.1, "cm"), item: "strip" }]);
    expect(sum?.amount).toBeCloseTo(45, 9);
    expect(sum?.unit).toBe("in");
    expect(more).toEqual([]);
  });

  it("stay apart where one unit can't be turned into the other", () => {
    expect(addUp([strip(2, "m"), strip(1, "roll"), strip(3, "")])).toHaveLength(3);
  });

  it("are bought in the larger unit once there are many", () => {
    expect(bought([strip(11_430, "cm"), strip(4500, "in"), strip(90, "in")])).toEqual([
      strip(114.3, "m"),
      strip(375, "ft"),
      strip(90, "in"),
    ]);
  });
});
