import { describe, expect, it } from "vitest";
import { dayOfSerial, isoDay } from "../../../../src/core";
import { daysOf, isSaid, readTyped } from "./typed-rows";

describe("days under a step's bare name", () => {
  // People saw 20250329 plants at the first release.
  it.each([
    ["20260502", "20260509"],
    ["2.5.2026", "13.5.2026"],
    ["02.05.26", "13.05.26"],
    ["46144.5", "46151.25"],
  ])("are days, not plants, when written %s", (first, second) => {
    const number = (text: string) => (/^\d+\.\d+$/.test(text) ? Number(text) : text);
    const records = readTyped([
      ["Batch", "Sown", "First release"],
      ["B-1", "2026-03-02", number(first)],
      ["B-2", "2026-03-09", number(second)],
    ]);
    const days = daysOf(records, "first release");
    expect(days[0]).toBe(first.startsWith("46") ? isoDay(dayOfSerial(46144)) : "2026-05-02");
    expect(days[1]).not.toBeNull();
  });

  it("are never read as a number of plants that no nursery has, without a word", () => {
    const records = readTyped([
      ["Batch", "Seeds sown"],
      ["B-1", 20260502],
      ["B-2", 120],
    ]);
    expect(isSaid(records, { row: 2, column: "Seeds sown" })).toBe(true);
  });
});

describe("the order of day and month", () => {
  it("is shown by the same column under the header above", () => {
    const records = readTyped(
      [
        ["Batch", "Sown", "Seeds sown"],
        ["B-1", "23/3/2026", 120],
        ["Batch", "Sown", "Seeds sown"],
        ["B-2", "3/4/2026", 130],
      ],
      "month",
    );
    expect(daysOf(records, "sowing")).toEqual(["2026-03-23", "2026-04-03"]);
  });

  it("doesn't matter to whether a batch is closed", () => {
    const records = readTyped([
      ["Batch", "Sown", "Closed"],
      ["B-1", "2026-03-02", "13/4/2026"],
      ["B-2", "2026-03-02", "4/13/2026"],
      ["B-3", "2026-03-02", "4/5/2026"],
    ]);
    expect(records.batches.map(({ closed }) => closed)).toEqual([true, true, true]);
  });
});
