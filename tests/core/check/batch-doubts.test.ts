import { describe, expect, it } from "vitest";
import type { Cell } from "../../../src/core/cells/cell";
import { checkedRecords } from "../../../src/core/check/checked-records";
import { builtInTimetable } from "../../../src/core/timetable/read-timetable";
import { day } from "../../support/days";
import { reading } from "../records/reading";

const HEADER = [
  ...["Bag lot", "Scions cut on", "Grafted on", "Grafts made", "First release"],
  ...["Take count day", "Takes", "Ready on", "Ready plants", "Culled", "Dispatched", "Closed"],
];
const SOUND = [
  ...["2026-05-01", "2026-05-04", 100, "2026-05-18", "2026-06-04", 80, "2026-08-24", 70],
  ...[30, 70, "2026-09-01"],
];
const SOUND_BATCHES = ["B1", "B2", "B3"].map((name) => [name, ...SOUND]);

/** What is found of one batch beside three sound ones, its cells changed by header. */
function found(changes: Readonly<Record<string, Cell>>) {
  const odd = ["B4", ...SOUND].map((cell, at) => changes[HEADER[at] as string] ?? cell);
  const rows = [["Batch", ...HEADER.slice(1)], ...SOUND_BATCHES, odd];
  const built = { timetable: builtInTimetable(), faults: [] };
  return checkedRecords(reading(rows), built, day("2026-11-25")).troubles.map(
    ({ row, column, found: text, code }) => [row, column, text, code],
  );
}

describe("doubts of a batch", () => {
  it("are none where all is sound", () => {
    expect(found({})).toEqual([]);
  });

  it("are more plants dispatched than were ready", () => {
    expect(found({ Dispatched: 90, Culled: 0 })).toEqual([[5, "Dispatched", "90", "count-rises"]]);
  });

  it("are plants that stand in a closed batch, but not a few that were miscounted", () => {
    const closed = (dispatched: number) => found({ Dispatched: dispatched, Culled: 30 });
    expect(closed(20)).toEqual([[5, "Closed", "2026-09-01", "closed-standing"]]);
    expect(closed(66)).toEqual([]);
  });

  it.each(["", "?", "??", "-", "–", "—"])("are takes done with %j for their number", (mark) => {
    const [one, ...more] = found({ Takes: mark });
    expect(more).toEqual([]);
    expect(one).toEqual([5, "Takes", mark, "count-missing"]);
  });

  it("are scions cut after the graft, or long before", () => {
    const cut = (on: string) => found({ "Scions cut on": on });
    const listed = (on: string) => [[5, "Scions cut on", on, "scions-cut"]];
    expect(cut("2026-05-05")).toEqual(listed("2026-05-05"));
    expect(cut("2026-03-11")).toEqual(listed("2026-03-11"));
    expect(cut("2026-04-20")).toEqual([]);
  });

  it("are scions cut too late as people write days: in two numbers, or without the year", () => {
    // Nothing was said of "14/02/2026" beside a graft of the 12th, since the text alone was asked.
    const table = (...cuts: readonly Cell[]) => [
      ["Batch", "Scions cut", "Grafted on", "Grafts made"],
      ...cuts.map((cut, at) => [`B${at}`, cut, "12/02/2026", 100]),
    ];
    const built = { timetable: builtInTimetable(), faults: [] };
    const rowsOf = (...cuts: readonly Cell[]) =>
      checkedRecords(reading(table(...cuts)), built, day("2026-11-25")).troubles.flatMap((one) =>
        one.code === "scions-cut" ? [[one.row, one.days]] : [],
      );
    expect(rowsOf("14/02/2026", "10/02/2026", "12/12/2025")).toEqual([
      [2, -2],
      [4, 62],
    ]);
    expect(rowsOf("14 Feb", "11 Feb", "2 Jan")).toEqual([
      [2, -2],
      [4, 41],
    ]);
    // No other date tells whether this is 10 February or 2 October.
    expect(rowsOf("10/02/2026")).toEqual([]);
  });

  // "?" and "-" stood in the takes for weeks, and Check found no trouble.
  it("are marks where a count is due, whether or not the table has a column for its day", () => {
    const table = (...takes: readonly Cell[]) => [
      ["Batch", "Grafted on", "Grafts made", "Takes"],
      ...takes.map((take, at) => [`B${at}`, at === 0 ? "2026-11-20" : "2026-09-01", 100, take]),
    ];
    const built = { timetable: builtInTimetable(), faults: [] };
    const listed = checkedRecords(
      reading(table("-", "?", "-", 80, "n/a", "")),
      built,
      day("2026-11-25"),
    ).troubles.map(({ row, code, found: text }) => [row, code, text]);
    // The first is not due yet; a blank one stands in the due list.
    expect(listed).toEqual([
      [3, "count-missing", "?"],
      [4, "count-missing", "-"],
      [6, "count-missing", "n/a"],
    ]);
  });

  it("are a wrap never opened while plants stand and later steps are done", () => {
    const open = { "First release": "", "Ready on": "", "Ready plants": "", Dispatched: "" };
    expect(found({ ...open, Culled: "", Closed: "" })).toEqual([
      [5, "First release", "", "release-missed"],
    ]);
    expect(found({ "First release": "" })).toEqual([]);
  });

  it("are no counts that the nursery never makes", () => {
    const rows = [["Batch", ...HEADER.slice(1)], ...SOUND_BATCHES].map((row, at) =>
      at === 0 ? row : row.map((cell, column) => (HEADER[column] === "Takes" ? "" : cell)),
    );
    const built = { timetable: builtInTimetable(), faults: [] };
    expect(checkedRecords(reading(rows), built, day("2026-11-25")).troubles).toEqual([]);
  });

  it("are none of a count that is written for a day to come", () => {
    const rows = [
      ["Batch", "Grafted on", "Grafts made"],
      ["B1", "2026-12-12", 100],
    ];
    const built = { timetable: builtInTimetable(), faults: [] };
    const { troubles } = checkedRecords(reading(rows), built, day("2026-11-25"));
    expect(troubles.map(({ code }) => code)).toEqual(["after-as-of"]);
  });

  // A nursery that keeps a log alone heard nothing of any of this.
  describe("in a log", () => {
    const log = (...lines: readonly (readonly Cell[])[]) => {
      const rows = [
        ["Day", "Batch", "Step", "Plants"],
        ["2026-02-10", "A", "Grafting", 200],
        ["2026-02-24", "A", "First release", ""],
        ["2026-03-12", "A", "Take count", 150],
        ["2026-02-10", "B", "Grafting", 100],
        ...lines,
      ];
      const built = { timetable: builtInTimetable(), faults: [] };
      return checkedRecords(reading(rows), built, day("2026-11-25")).troubles.map(
        ({ row, column, found: text, code }) => [row, column, text, code],
      );
    };
    const released = ["2026-02-24", "B", "First release", ""];

    it.each(["", "?"])("are takes done with %j for their number", (mark) => {
      expect(log(released, ["2026-03-12", "B", "Take count", mark])).toEqual([
        [7, "Plants", mark, "count-missing"],
      ]);
    });

    it("are more dispatched in all than were there, at the last line of it", () => {
      const sent = (on: string, plants: number) => [on, "B", "Dispatched", plants];
      const taken = [released, ["2026-03-12", "B", "Take count", 80]];
      expect(log(...taken, sent("2026-07-10", 50), sent("2026-07-11", 40))).toEqual([
        [9, "Plants", "40", "count-rises"],
      ]);
      expect(log(...taken, sent("2026-07-10", 50), sent("2026-07-11", 30))).toEqual([]);
    });

    it("are days out of order, in the line that says them", () => {
      expect(log(["2026-02-01", "B", "First release", ""])).toEqual([
        [6, "Day", "2026-02-01", "before-step"],
      ]);
    });

    it("are plants that stand in a closed batch, and a wrap never opened", () => {
      const taken = ["2026-03-12", "B", "Take count", 80];
      expect(log(released, taken, ["2026-07-10", "B", "Closed", ""])).toEqual([
        [8, "Plants", "", "closed-standing"],
      ]);
      expect(log(taken)).toEqual([[5, "", "", "release-missed"]]);
    });
  });
});
