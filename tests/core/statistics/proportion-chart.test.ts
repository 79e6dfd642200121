import { describe, expect, it } from "vitest";
import {
  type ProportionChart,
  proportionChart,
} from "../../../src/core/statistics/proportion-chart";
import { fixture } from "../../support/fixtures";

const points = (taken: readonly number[], grafted = 100) =>
  taken.map((some) => ({ taken: some, grafted }));
const chart = (taken: readonly number[], grafted?: number) =>
  proportionChart(points(taken, grafted)) as ProportionChart;

describe("published values", () => {
  const { data, expected } = fixture<
    { sampleSize: number; defective: number[] },
    {
      pChart: { lower: number; upper: number };
      beyondPChart: number[];
      laney: { sigmaZ: number; lower: number; upper: number; beyond: number[] };
    }
  >("nist-p-chart");
  const wafers = points(data.defective, data.sampleSize);

  it("NIST/SEMATECH e-Handbook 6.3.3.2: centre 0.2313, limits 0.0524 and 0.4102", () => {
    const { centre, limits, readings } = proportionChart(wafers, true) as ProportionChart;
    const [first] = limits;
    expect([centre, first?.low, first?.high].map((one) => one?.toFixed(4))).toEqual([
      ...["0.2313", "0.0524", "0.4102"],
    ]);
    const beyond = readings.flatMap((one, at) => (one === "low" || one === "high" ? [at + 1] : []));
    expect(beyond).toEqual(expected.beyondPChart);
  });

  it("Laney's chart of the same wafers, as R computes it from the formula", () => {
    const { width, limits, readings } = proportionChart(wafers) as ProportionChart;
    expect(width).toBeCloseTo(expected.laney.sigmaZ, 12);
    expect(limits[0]?.high).toBeCloseTo(expected.laney.upper, 12);
    // A share below 0 is no limit.
    expect(expected.laney.lower).toBeLessThan(0);
    expect(limits[0]?.low).toBe(0);
    expect(readings.includes("high")).toBe(false);
  });

  it("Laney's width by hand: 80, 60, 80, 60 of 100 each", () => {
    // Centre 0.7; a standard error √(0.7 × 0.3 ÷ 100) = 0.0458258; standardised shares ±2.182179;
    // three ranges of 4.364358; ÷ 1.128 = 3.869110. Lower limit 0.7 − 3 × 0.0458258 × 3.869110.
    const { centre, width, limits } = chart([80, 60, 80, 60]);
    expect(centre).toBe(0.7);
    expect(width.toFixed(5)).toBe("3.86911");
    expect(limits[0]?.low.toFixed(4)).toBe("0.1681");
    expect(limits[0]?.high).toBe(1);
  });
});

describe("proportionChart", () => {
  it("is the plain chart where periods differ less than chance", () => {
    const even = points([80, 80, 80, 80, 80]);
    expect(proportionChart(even)).toEqual(proportionChart(even, true));
  });

  it("reads eight in a row on one side as a drift, from the eighth on", () => {
    const up = [...Array(8).fill(78), ...Array(9).fill(81)];
    expect(chart(up).readings).toEqual([
      ...Array(7).fill("usual"),
      "drifting down",
      ...Array(7).fill("usual"),
      "drifting up",
      "drifting up",
    ]);
    expect(chart([...up].reverse()).readings.filter((one) => one !== "usual")).toEqual([
      "drifting up",
      "drifting up",
      "drifting down",
    ]);
  });

  it("does not count a period on the very centre to either side", () => {
    const readings = chart([78, 78, 78, 78, 80, 78, 78, 78, 78, ...Array(8).fill(82)]).readings;
    expect(readings.slice(0, 9)).toEqual(Array(9).fill("usual"));
    expect(readings.at(-1)).toBe("drifting up");
  });

  it("reads a period beyond its limits as low or high, with its own grafts", () => {
    const steady = Array(20).fill(80);
    expect(chart([...steady, 40]).readings.at(-1)).toBe("low");
    expect(chart([...steady.map(() => 50), 95]).readings.at(-1)).toBe("high");
    const small = proportionChart([...points(steady), { taken: 5, grafted: 10 }]);
    expect(small?.readings.at(-1)).toBe("usual");
  });

  it.each([[[0, 0, 0]], [[100, 100]], [[50]]])("has finite limits for %j of 100", (taken) => {
    const { limits, readings } = chart(taken);
    for (const { low, high } of limits) expect(low <= high && low >= 0 && high <= 1).toBe(true);
    expect(readings.every((one) => one === "usual")).toBe(true);
  });

  it("answers null without periods", () => {
    expect(proportionChart([])).toBeNull();
  });
});
