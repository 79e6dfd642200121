import { describe, expect, it } from "vitest";
import { askRows, askTable } from "../support/ask";

const DAYS = [[4], [5], [6], [7], [8], [9], [11]];
const COUNTS = [[0], [4], [17], [10], [7], [1], [1]];

describe("GERMINATION_SUMMARY", () => {
  it("has a row for each measure with its unit (worked example of germinationmetrics, 50 seeds)", () => {
    const [header, ...rows] = askRows("GERMINATION_SUMMARY", [DAYS, COUNTS, 50]);
    expect(header).toEqual(["Measure", "Value", "Unit"]);
    expect(
      rows.map(([measure, value, unit]) => [measure, Number(Number(value).toPrecision(7)), unit]),
    ).toEqual([
      ["Sown", 50, "seeds"],
      ["Came up", 40, "seeds"],
      ["Germination", 80, "%"],
      ["First came up", 5, "days"],
      ["Last came up", 11, "days"],
      ["Half came up, counting (N+1)/2", 5.970588, "days"],
      ["Half came up, counting N/2", 5.941176, "days"],
      ["Mean time", 6.7, "days"],
      ["Variance of the time", 1.446154, "days²"],
      ["Standard error of the mean time", 0.1901416, "days"],
      ["Speed (Maguire)", 6.138925, "seeds a day"],
      ["Velocity, 100 by mean time", 14.92537, "% a day"],
    ]);
  });

  it("adds samples sown alike together, and says whether they agree", () => {
    const two = [[7], [14]];
    const counts = [
      [40, 38],
      [50, 40],
    ];
    const rows = askTable("GERMINATION_SUMMARY", [two, counts, 200]);
    expect(rows[1]).toEqual({ Measure: "Came up", Value: 168, Unit: "seeds" });
    expect(rows.at(-1)).toEqual({
      Measure:
        "The two samples differ by 12, more than the 11 allowed at a mean of 84 % (7 CFR 201.55): test again",
      ...{ Value: "", Unit: "" },
    });
  });

  it("takes a blank inspection as one that saw nothing come up", () => {
    const blank = COUNTS.map(([count]) => [count === 0 ? "" : count]);
    expect(askRows("GERMINATION_SUMMARY", [DAYS, blank, 50])).toEqual(
      askRows("GERMINATION_SUMMARY", [DAYS, COUNTS, 50]),
    );
  });

  it("leaves blank what can't be measured where nothing came up", () => {
    const rows = askTable("GERMINATION_SUMMARY", [[[4], [7]], [[0], [0]], 50]);
    const value = (name: string) => rows.find(({ Measure }) => Measure === name)?.Value;
    expect([value("Came up"), value("Germination"), value("Mean time")]).toEqual([0, 0, ""]);
  });

  it.each<[unknown, unknown, unknown, string]>([
    [[[4], [7]], [[1]], 50, "days and counts must have one row for each inspection; found 2 and 1"],
    [[[7], [4]], [[1], [2]], 50, "days must rise; found 4 after 7"],
    [[[7], [7]], [[1], [2]], 50, "days must rise; found 7 after 7"],
    [[[7]], [[51]], 50, "51 came up of 50 sown: more than all"],
    [[[7]], [["many"]], 50, "counts: not a number of plants"],
    [[["soon"]], [[1]], 50, "days: not a number of plants"],
    [[[7]], [["#N/A"]], 50, "counts: the cell shows #N/A"],
    [[[7]], [[1]], 0, "sown must be 1 or more; found 0"],
    [[[7]], [[1]], "", "sown must be 1 or more; found 0"],
    [[[7]], [[1]], 2.5, "sown must be a whole number, 0 or more; found 2.5"],
  ])(
    "refuses the days %j, the counts %j and %j sown in one sentence",
    (days, counts, sown, said) => {
      expect(() => askRows("GERMINATION_SUMMARY", [days, counts, sown])).toThrow(
        new Error(`GERMINATION_SUMMARY: ${said}`),
      );
    },
  );
});
