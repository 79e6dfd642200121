import { describe, expect, it } from "vitest";
import type { Cell } from "../../../src/core/cells/cell";
import { checkedRecords } from "../../../src/core/check/checked-records";
import { builtInTimetable } from "../../../src/core/timetable/read-timetable";
import { day } from "../../support/days";
import { reading, troublesOf } from "../records/reading";
import { timetableOf } from "../timetable/typed-timetable";

const HEADER = ["Batch", "Method", "Sown", "Grafted on", "Grafts made", "Takes", "Ready plants"];
const built = { timetable: builtInTimetable(), faults: [] };

function check(rows: readonly (readonly Cell[])[], asOf: string | null = "2026-11-25") {
  const { troubles } = checkedRecords(
    reading([HEADER, ...rows]),
    built,
    asOf === null ? null : day(asOf),
  );
  return troubles;
}

describe("checkedRecords", () => {
  it("lists nothing where nothing is amiss, and counts the rows of the range", () => {
    const records = reading([HEADER, ["B1", "", "2026-05-01", "2026-08-01", 100, 80, 70], []]);
    expect(checkedRecords(records, built, day("2026-11-25"))).toEqual({
      troubles: [],
      entries: [],
      rows: { used: 1, leftOut: 0, notBatches: 0, heading: 1, blank: 1 },
    });
  });

  it("names rows from the top of the range, titles counted", () => {
    const records = reading([["Title"], [], HEADER, ["B1", "", "soon", "", 100, "", ""]]);
    const [first] = checkedRecords(records, built, null).troubles;
    expect(first).toMatchObject({ row: 4, column: "Sown", found: "soon" });
  });

  it("finds counts that rise along the steps", () => {
    expect(check([["B1", "", "", "", 100, 101, 120]])).toEqual([
      {
        row: 2,
        column: "Takes",
        found: "101",
        code: "count-rises",
        before: 100,
        step: "Grafting",
      },
      {
        row: 2,
        column: "Ready plants",
        found: "120",
        code: "count-rises",
        before: 101,
        step: "Take count",
      },
    ]);
  });

  it("does not mind counts that stay, or are not made", () => {
    expect(check([["B1", "", "", "", 100, "", 100]])).toEqual([]);
  });

  it("finds days that run backwards, and days to come", () => {
    expect(check([["B1", "", "2026-08-02", "2026-08-01", "", "", ""]])).toEqual([
      {
        row: 2,
        column: "Grafted on",
        found: "2026-08-01",
        code: "before-step",
        step: "Sowing",
        stepDay: day("2026-08-02"),
      },
    ]);
    const ahead = [["B1", "", "2026-08-01", "2026-11-26", "", "", ""]];
    expect(check(ahead)).toEqual([
      {
        row: 2,
        column: "Grafted on",
        found: "2026-11-26",
        code: "after-as-of",
        asOf: day("2026-11-25"),
      },
    ]);
    expect(check(ahead, null)).toEqual([]);
    expect(check(ahead, "2026-11-26")).toEqual([]);
  });

  it("finds no fault in a bud that breaks before the wrap is opened, but in one before the graft", () => {
    // "First growth 10-15 days after grafting", Ridwan et al. 2015, as the built-in method says.
    const grown = (buds: string) => [
      ["Batch", "Grafted on", "Grafts made", "First release", "Bud break"],
      ["B1", "2026-08-01", 100, "2026-08-15", buds],
    ];
    const found = (buds: string) =>
      troublesOf(checkedRecords(reading(grown(buds)), built, day("2026-11-25")));
    expect(found("2026-08-12")).toEqual([]);
    expect(found("2026-07-30")).toEqual(["2 Bud break: before-step"]);
  });

  it("finds a name that is used twice, whatever its capitals, and methods that are not there", () => {
    expect(
      check([
        ["B1", "Kiwi", "", "", 100, "", ""],
        ["b1", "cocoa CLEFT graft", "", "", 90, "", ""],
      ]),
    ).toEqual([
      { row: 2, column: "Method", found: "Kiwi", code: "no-such-method", near: null },
      {
        row: 3,
        column: "Batch",
        found: "b1",
        code: "nearly-same-name",
        name: "B1",
        firstRow: 2,
      },
    ]);
    const named = (first: string, second: string) =>
      check([first, second].map((name) => [name, "", "2026-05-01", "", 100, "", ""]));
    expect(named("B1", "B1")).toMatchObject([{ row: 3, code: "same-name", firstRow: 2 }]);
    expect(named("E-05", "e o5")).toMatchObject([
      { row: 3, found: "e o5", code: "nearly-same-name", name: "E-05" },
    ]);
    expect(named("B1", "B10")).toEqual([]);
  });

  it("puts what costs most first, then goes down the table", () => {
    const troubles = check([
      ["B1", "", "mid May 2026", "", 100, 110, ""],
      ["B2", "", "soon", "", 90, "", ""],
      ["Total", "", "", "", 100, 110, ""],
      ["B3", "", "later", "", 80, "", ""],
    ]);
    expect(troublesOf({ troubles })).toEqual([
      "3 Sown: not-a-day",
      "5 Sown: not-a-day",
      "2 Takes: count-rises",
      "2 Sown: cell-read-as",
      "4 : sums",
    ]);
  });

  it("lists what is wrong with the timetable", () => {
    const broken = timetableOf(
      "Step|After|From day|Usual day|By day\nSowing||||\nReady|Sowing|9|5|7",
    );
    const [first] = checkedRecords(reading([HEADER]), broken, null).troubles;
    expect(first).toMatchObject({
      row: null,
      column: "",
      found: "9 / 5 / 7",
      code: "timetable",
      fault: { code: "days-must-rise", row: 3, column: "usual", step: "Ready" },
    });
  });
});
