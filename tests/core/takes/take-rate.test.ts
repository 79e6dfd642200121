import { describe, expect, it } from "vitest";
import { takeRange, takeRate } from "../../../src/core/takes/take-rate";
import { faultOf } from "../../support/fault-of";

describe("published values: Pimentel-Gomes (2009) p. 382, 180 and 150 of 200 grafts took", () => {
  it.each([
    [180, 0.9],
    [150, 0.75],
  ])("%i of 200 is %d", (taken, rate) => {
    expect(takeRate(taken, 200)).toBe(rate);
  });
});

describe("takeRate and takeRange", () => {
  it.each([
    [null, 100],
    [80, null],
    [null, null],
    [0, 0],
    [null, 0],
  ])("are not known for %s of %s", (taken, grafted) => {
    expect(takeRate(taken, grafted)).toBeNull();
    expect(takeRange(taken, grafted, 0.95)).toBeNull();
  });

  it("keep none apart from not counted", () => {
    expect(takeRate(0, 20)).toBe(0);
    // Newcombe (1998) Table I, method 3: 0/20 gives 0 to 0.1611.
    const range = takeRange(0, 20, 0.95) ?? [];
    expect(range.map((share) => share.toFixed(4))).toEqual(["0.0000", "0.1611"]);
    expect(takeRate(20, 20)).toBe(1);
  });

  it("refuse more taken than grafted", () => {
    const fault = { code: "more-taken-than-grafted", taken: 21, grafted: 20 };
    expect(faultOf(() => takeRate(21, 20))).toEqual(fault);
    expect(faultOf(() => takeRange(21, 20, 0.95))).toEqual(fault);
    expect(takeRate(5, 0)).toBeNull();
  });
});
