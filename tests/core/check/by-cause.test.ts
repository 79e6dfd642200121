import { describe, expect, it } from "vitest";
import type { Cell } from "../../../src/core/cells/cell";
import { checkedRecords } from "../../../src/core/check/checked-records";
import { builtInTimetable } from "../../../src/core/timetable/read-timetable";
import { day } from "../../support/days";
import { reading } from "../records/reading";

const HEADER = ["Batch", "Method", "Grafted on", "Grafts made", "First release", "Takes"];

/** The entries in short: code, rows, plants at stake. */
function entries(rows: readonly (readonly Cell[])[], header: readonly Cell[] = HEADER) {
  const built = { timetable: builtInTimetable(), faults: [] };
  return checkedRecords(reading([header, ...rows]), built, day("2026-11-25")).entries.map(
    ({ troubles, plants }) => [troubles[0]?.code, troubles.map(({ row }) => row), plants],
  );
}

describe("troubles by their cause", () => {
  it("are one entry for the same word in many rows, and another for another word", () => {
    expect(
      entries([
        ["B1", "Cleft", "2026-08-01", 100, "", 80],
        ["B2", "", "2026-08-01", 100, "", 80],
        ["B3", "Cleft", "2026-08-01", 100, "", 70],
        ["B4", "Kiwi", "2026-08-01", 100, "", ""],
      ]),
    ).toEqual([
      ["several-methods", [2, 4], 150],
      ["no-such-method", [5], 100],
    ]);
  });

  it("are one entry for days that come too soon after the same step, whatever the days", () => {
    const soon = (name: string, release: string) => [name, "", "2026-08-01", 100, release, 80];
    expect(entries([soon("B1", "2026-08-03"), soon("B2", "2026-08-04")])).toEqual([
      ["too-soon", [2, 3], 160],
    ]);
  });

  it("stand in the order of the plants at stake, where they cost alike", () => {
    expect(
      entries([
        ["B1", "", "2026-08-01", 100, "2026-07-30", 10],
        ["B2", "", "2026-08-01", 100, "2026-08-03", 90],
      ]).map(([code]) => code),
    ).toEqual(["too-soon", "before-step"]);
  });

  it("are one entry, the first, where no column names the batches", () => {
    const rows = [
      ["2026-08-01", 100, 10],
      ["2026-08-01", 110, 20],
    ];
    const [first, ...more] = entries(rows, ["Grafted on", "Grafts made", "Takes"]);
    expect(first).toEqual(["no-batch-column", [null], 30]);
    expect(more.filter(([code]) => code === "batch-unnamed")).toEqual([]);
  });

  // The first thing one read was a column of somebody's own, and a batch of 900 stood in the middle.
  it("stand in the order of the plants at stake whatever they cost, and last where none are known", () => {
    const [soon, cocoa] = ["2026-08-03", "Cocoa cleft graft"];
    expect(
      entries(
        [
          ["B1", "Kiwi", "2026-08-01", 100, "", 10, "blue"],
          ["B2", cocoa, "2026-08-01", 1000, soon, 900, "red"],
          ["B3", cocoa, "a while ago", 100, "", 80, "red"],
          ["B4", cocoa, "mid August 2026", 300, "", 250, "red"],
          ["B5", "Kiwwi", "2026-08-01", "", "", "", "red"],
        ],
        [...HEADER, "Pot colour"],
      ),
    ).toEqual([
      ["too-soon", [3], 900],
      ["cell-unread", [4], 80],
      ["no-such-method", [2], 10],
      ["no-such-method", [6], null],
      ["column-left", [null], null],
      ["cell-read-as", [5], null],
    ]);
  });

  it("count the plants under a column that may be one of ours", () => {
    const rows = [
      ["B1", "2026-08-01", 100, 80, "2026-08-20"],
      ["B2", "2026-08-01", 200, 150, ""],
    ];
    const [first] = entries(rows, ["Batch", "Grafted on", "Grafts made", "Takes", "Tended"]);
    expect(first).toEqual(["column-left", [null], 80]);
  });

  it("are one for a name that is nearly another, with every batch of the rarer", () => {
    const rows = ["Amberlow", "Amberlow", "Amberlow", "Amberlo", "Amberlo"].map((variety, at) => [
      ...[`B${at}`, variety, "2026-08-01", 100],
    ]);
    expect(entries(rows, ["Batch", "Variety", "Grafted on", "Grafts made"])).toEqual([
      ["near-alike", [5, 6], 200],
    ]);
  });
});
