/* Longer than most: what a table of records may be, case by case, in one list to look it up in. */
import { describe, expect, it } from "vitest";
import { day } from "../../support/days";
import { faultOf } from "../../support/fault-of";
import { atStep, reading, troublesOf } from "./reading";

const HEADER = ["Batch", "Variety", "Grafted on", "Grafts made", "Takes"];
const B1 = ["B1", "Alba", "2026-09-03", 100, 80];

describe("readRecords", () => {
  it("reads every column of the contract", () => {
    const contract = (
      "Batch, From lot, Variety, Rootstock, Method, Place, Grafter, Scion source, Culled, " +
      "Dispatched, Closed, Note, Sown, Seeds sown, Germination day, Germinated, Grafted on, " +
      "Grafts made, First release, Bud break, Take count day, Takes, First flush, " +
      "Flush hardening, Branching, Union closed, Ready on, Ready plants"
    ).split(", ");
    const records = reading([
      contract,
      [
        "B1",
        "L7",
        "Alba",
        "Stout",
        "Cocoa cleft graft",
        "Bay 2",
        "Ana",
        "Garden 1",
        3,
        40,
        "",
        "fine",
        "2026-01-05",
        200,
        "2026-01-15",
        170,
        "2026-04-05",
        140,
        "2026-04-19",
        "2026-05-03",
        "2026-05-05",
        110,
        "2026-05-17",
        "2026-05-19",
        "2026-06-04",
        "2026-07-04",
        "2026-07-26",
        100,
      ],
    ]);
    expect(records.batches[0]).toMatchObject({
      row: 2,
      name: "B1",
      fromLot: "L7",
      variety: "Alba",
      rootstock: "Stout",
      method: "Cocoa cleft graft",
      place: "Bay 2",
      grafter: "Ana",
      scionSource: "Garden 1",
      culled: 3,
      dispatched: 40,
      closed: false,
    });
    const steps = [
      ["sowing", "2026-01-05", 200],
      ["germination", "2026-01-15", 170],
      ["grafting", "2026-04-05", 140],
      ["first release", "2026-04-19", null],
      ["bud break", "2026-05-03", null],
      ["take count", "2026-05-05", 110],
      ["first flush", "2026-05-17", null],
      ["flush hardening", "2026-05-19", null],
      ["branching", "2026-06-04", null],
      ["union closed", "2026-07-04", null],
      ["ready", "2026-07-26", 100],
    ] as const;
    for (const [key, text, count] of steps) {
      expect([key, atStep(records, 0, key)]).toEqual([key, { day: day(text), count }]);
    }
    expect(records.batches[0]).toMatchObject({ given: 0, givenBeforeCount: 0, received: null });
    // The range holds no batch of the lot's name.
    expect(troublesOf(records)).toEqual(["2 From lot: no-such-lot"]);
    expect(records.stepKeys).toEqual(steps.map(([key]) => key));
  });

  it.each(Array.from({ length: 10 }, (_, row) => row))("finds the header in row %i", (above) => {
    const titles = Array.from({ length: above }, (_, row) => (row % 2 ? [] : [`Sheet ${row}`]));
    const records = reading([...titles, HEADER, B1]);
    expect(records.batches.map(({ name, row }) => [name, row])).toEqual([["B1", above + 2]]);
    expect(records.rows).toEqual({
      heading: above + 1,
      used: 1,
      leftOut: 0,
      notBatches: 0,
      blank: 0,
    });
  });

  it("does not look for the header below the tenth row, and says where it looked", () => {
    const titles = Array.from({ length: 10 }, () => ["Nursery"]);
    expect(faultOf(() => reading([...titles, HEADER, B1]))).toEqual({
      code: "no-header",
      begins: "Nursery",
    });
  });

  it.each([[[[]]], [[["", ""]]], [[[1, 2, 3]]], [[["Variety", "Place"]]], [[["Batch"]]]])(
    "finds no header in %j",
    (rows) => {
      expect(faultOf(() => reading(rows))).toMatchObject({ code: "no-header" });
    },
  );

  it("says which cell keeps it from finding a header", () => {
    const of = { code: "not-ready-yet", argument: "records" };
    expect(faultOf(() => reading([["", "#REF!"]]))).toEqual({
      ...of,
      row: 1,
      column: "2",
      shown: "#REF!",
    });
    expect(faultOf(() => reading([[], ["Loading..."]]))).toEqual({
      ...of,
      row: 2,
      column: "1",
      shown: null,
    });
  });

  it("takes columns in any order, under other words for them, and leaves others alone", () => {
    const plain = reading([HEADER, B1]);
    const other = reading([
      ["Live grafts", "Weather", "Cultivar", "Lot no.", "Date grafted", "No. grafted", "Moon"],
      [80, "rain", "Alba", "B1", "3-Sep-2026", 100, "new"],
    ]);
    const facts = (records: typeof plain) => {
      const { row, name, variety, culled, closed } = records.batches[0] as never as Record<
        string,
        unknown
      >;
      return {
        row,
        name,
        variety,
        culled,
        closed,
        grafting: atStep(records, 0, "grafting"),
        takes: atStep(records, 0, "take count"),
      };
    };
    expect(facts(other)).toEqual(facts(plain));
    expect(
      other.columns.filter(({ target }) => target === null).map(({ header }) => header),
    ).toEqual(["Weather", "Moon"]);
    expect(troublesOf(other)).toEqual(["- Weather: column-left", "- Moon: column-left"]);
  });

  it("reads the text of a column that it does not know, for grouping", () => {
    const records = reading([
      [...HEADER, "Moon"],
      [...B1, " new  moon "],
    ]);
    expect(records.textIn(records.batches[0] as never, 5)).toBe("new moon");
  });

  it("keeps blank apart from 0 in every count", () => {
    const records = reading([
      ["Batch", "Grafts made", "Takes", "Culled", "Dispatched"],
      ["none counted", 100, "", "", ""],
      ["none took", 100, 0, 0, 0],
    ]);
    expect(records.batches.map(({ culled, dispatched }) => [culled, dispatched])).toEqual([
      [null, null],
      [0, 0],
    ]);
    expect([0, 1].map((batch) => atStep(records, batch, "take count").count)).toEqual([null, 0]);
  });

  it("leaves out a cell that it can't read, uses the rest of the row, and lists the cell", () => {
    const records = reading([
      HEADER,
      ["B1", "Alba", "soon", "many", 80],
      ["B2", "#N/A", true, -4, 2.5],
    ]);
    expect(records.batches.map(({ name }) => name)).toEqual(["B1", "B2"]);
    expect(atStep(records, 0, "take count").count).toBe(80);
    expect(troublesOf(records).sort()).toEqual([
      "2 Grafted on: not-a-day",
      "2 Grafts made: not-a-count",
      "3 Grafted on: tick-box-for-day",
      "3 Grafts made: below-zero",
      "3 Takes: part-of-a-plant",
      "3 Variety: cell-shows",
    ]);
    for (const trouble of records.troubles) {
      expect(trouble.found).not.toBe("");
      expect(trouble.code).toBe("cell-unread");
    }
  });

  it("names both days of a date that could be two", () => {
    const records = reading([HEADER, ["B1", "Alba", "3/9/26", 100, 80]], { localeOrder: null });
    expect(records.troubles).toMatchObject([
      { row: 2, why: { code: "either-day", days: [day("2026-09-03"), day("2026-03-09")] } },
    ]);
    expect(atStep(records, 0, "grafting")).toEqual({ day: null, count: 100 });
  });

  it("settles the order of day and month for each column by itself", () => {
    const records = reading(
      [
        ["Batch", "Sown", "Grafted on"],
        ["B1", "13/1/26", "4/13/26"],
        ["B2", "3/9/26", "3/9/26"],
      ],
      { localeOrder: null },
    );
    expect(atStep(records, 1, "sowing").day).toBe(day("2026-09-03"));
    expect(atStep(records, 1, "grafting").day).toBe(day("2026-03-09"));
  });

  it("says how it read a day that is not plainly written", () => {
    const records = reading([HEADER, ["B1", "Alba", "mid March 2026", 100, 80]]);
    expect(atStep(records, 0, "grafting").day).toBe(day("2026-03-16"));
    expect(records.troubles).toMatchObject([
      { row: 2, found: "mid March 2026", readAs: { code: "day", day: day("2026-03-16") } },
    ]);
  });

  it("leaves out a day farther away than any batch can be, and says so", () => {
    // 15 years back and 3 ahead of 25 November 2026, leap days and all.
    for (const [text, isFar] of [
      ["2011-11-14", false],
      ["2011-11-13", true],
      ["2029-11-27", false],
      ["2029-11-28", true],
      ["1926-09-03", true],
    ] as const) {
      const records = reading([HEADER, ["B1", "Alba", text, 100, 80]]);
      expect(atStep(records, 0, "grafting").day).toBe(isFar ? null : day(text));
      expect(records.troubles).toMatchObject(
        isFar ? [{ row: 2, why: { code: "too-far-away", day: day(text) } }] : [],
      );
    }
  });

  it("settles a day without a year by the days beside it, else by the as-of day, and says so", () => {
    const records = reading([
      ["Batch", "Sown", "Grafted on", "Grafts made"],
      ["B1", "20 Nov", "2025-02-18", 100],
      ["B2", "20 Nov", "", 100],
      ["B3", "", "26 Nov", 100],
    ]);
    expect(atStep(records, 0, "sowing").day).toBe(day("2024-11-20"));
    expect(atStep(records, 1, "sowing").day).toBe(day("2026-11-20"));
    expect(atStep(records, 2, "grafting").day).toBe(day("2025-11-26"));
    expect(records.troubles).toMatchObject([
      { row: 2, readAs: { code: "day", day: day("2024-11-20") } },
      { row: 3, readAs: { code: "day", day: day("2026-11-20") } },
      { row: 4, readAs: { code: "day", day: day("2025-11-26") } },
    ]);
  });

  it("refuses to answer while a cell that it reads is loading, but not for one it leaves alone", () => {
    expect(faultOf(() => reading([HEADER, ["B1", "Alba", "Loading...", 100, 80]]))).toEqual({
      code: "not-ready-yet",
      argument: "records",
      row: 2,
      column: "Grafted on",
      shown: null,
    });
    expect(faultOf(() => reading([HEADER, ["Loading...", "Alba", "", 100, 80]]))).toMatchObject({
      code: "not-ready-yet",
    });
    expect(
      reading([
        [...HEADER, "Moon"],
        [...B1, "Loading..."],
      ]).batches,
    ).toHaveLength(1);
  });

  it("names a batch without a name by its row, and says so", () => {
    const records = reading([HEADER, ["", "Alba", "", 100, 80]]);
    expect(records.batches[0]?.name).toBe("Row 2");
    expect(troublesOf(records)).toEqual(["2 Batch: batch-unnamed"]);
  });

  it.each([
    ["yes", true],
    ["Yes", true],
    ["x", true],
    [true, true],
    ["2026-09-03", true],
    [{ day: day("2026-09-03") }, true],
    ["no", false],
    ["No", false],
    [false, false],
    ["", false],
    ["  ", false],
  ])("reads %j under Closed as %s", (cell, closed) => {
    const records = reading([
      [...HEADER, "Closed"],
      [...B1, cell],
    ]);
    expect(records.batches[0]?.closed).toBe(closed);
    expect(records.troubles).toEqual([]);
  });

  it("lists a word under Closed that is neither a day nor yes or no", () => {
    const records = reading([
      [...HEADER, "Closed"],
      [...B1, "nearly"],
    ]);
    expect(records.batches[0]?.closed).toBe(false);
    expect(troublesOf(records)).toEqual(["2 Closed: neither-day-nor-yes"]);
  });

  it("does not change the cells it is given", () => {
    const rows = Object.freeze([Object.freeze(HEADER), Object.freeze(B1)]) as string[][];
    reading(rows);
    expect(rows).toEqual([HEADER, B1]);
  });
});
