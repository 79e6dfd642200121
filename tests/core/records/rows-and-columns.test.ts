import { describe, expect, it } from "vitest";
import { leftOut } from "../../../src/core/records/left-out";
import { stepIndex } from "../../../src/core/records/records";
import { day } from "../../support/days";
import { atStep, reading, troublesOf } from "./reading";

const HEADER = ["Batch", "Variety", "Grafted on", "Grafts made", "Takes"];
const row = (name: string) => [name, "Alba", "2026-09-03", 100, 80];
const rowTotal = ({ rows }: ReturnType<typeof reading>) =>
  rows.heading + rows.used + rows.leftOut + rows.notBatches + rows.blank;

/** Rows that are listed as no batches, by row and what they are taken for. */
function setAside({ troubles }: ReturnType<typeof reading>): string[] {
  return troubles.map((one) => `${one.row}: ${one.code === "no-batch" ? one.as : one.code}`);
}

describe("rows of the range", () => {
  it("are heading, used, set aside or blank, to the last", () => {
    const rows = [
      ["Grafts of 2026"],
      HEADER,
      row("B1"),
      ["", "", "", "", ""],
      row("B2"),
      HEADER,
      row("B3"),
      ["Total", "", "", 300, 240],
      ...Array.from({ length: 990 }, () => ["", " ", "", "", ""]),
    ];
    const records = reading(rows);
    expect(records.rows).toEqual({ heading: 3, used: 3, leftOut: 0, notBatches: 1, blank: 991 });
    expect(rowTotal(records)).toBe(rows.length);
    expect(records.batches.map(({ name, row: at }) => [name, at])).toEqual([
      ["B1", 3],
      ["B2", 5],
      ["B3", 7],
    ]);
    expect(setAside(records)).toEqual(["8: sums"]);
    expect(records.troubles[0]?.found).toBe("Total");
    // Sums are no batches: nothing of the nursery's is missing without them.
    expect(leftOut(records)).toEqual([]);
  });

  it.each(["Total", "TOTALS", "Grand total", "Sub-total Bay 2", "Sum", "Total:"])(
    "are set aside and listed where they open with %s",
    (word) => {
      const records = reading([HEADER, row("B1"), row(word)]);
      expect(records.batches.map(({ name }) => name)).toEqual(["B1"]);
      expect(setAside(records)).toEqual(["3: sums"]);
      expect(records.troubles[0]?.found).toBe(word);
      expect(records.rows).toMatchObject({ used: 1, notBatches: 1, leftOut: 0 });
      expect(leftOut(records)).toEqual([]);
    },
  );

  it.each(["Summer 1", "Totally new", "Sumatra 4"])(
    "are batches where they are called %s",
    (word) => {
      expect(reading([HEADER, row(word)]).batches.map(({ name }) => name)).toEqual([word]);
    },
  );

  // A person writes "Total" under the first column that is wide enough, the batch's cell left blank.
  it("are set aside as sums too where the word stands beside a blank name", () => {
    const records = reading([HEADER, row("B1"), ["", "Total", "", 100, 80]]);
    expect(records.batches.map(({ name }) => name)).toEqual(["B1"]);
    expect(troublesOf(records)).toEqual(["3 : sums"]);
    expect(records.troubles[0]?.found).toBe("Total");
    expect(rowTotal(records)).toBe(3);
  });

  it("may be none below the header", () => {
    const records = reading([HEADER]);
    expect(records.batches).toEqual([]);
    expect(records.rows).toEqual({ heading: 1, used: 0, leftOut: 0, notBatches: 0, blank: 0 });
    expect(leftOut(records)).toEqual([]);
  });

  it("are notes where they hold one cell that is no batch's name", () => {
    const records = reading([
      [...HEADER, "Moon"],
      ["", "", "", "", "", "new"],
    ]);
    expect(records.rows).toEqual({ heading: 1, used: 0, leftOut: 0, notBatches: 1, blank: 0 });
    const [left, ...aside] = records.troubles;
    expect(left).toMatchObject({ column: "Moon", code: "column-left", holds: "text" });
    expect(setAside({ ...records, troubles: aside })).toEqual(["2: heading"]);
    expect(aside[0]?.found).toBe("new");
  });

  it("are batches with a name alone where fuller ones are named alike", () => {
    const records = reading([HEADER, row("T24-01"), ["T24-02"], ["Bay 2"], ["T25"]]);
    expect(records.batches.map(({ name }) => name)).toEqual(["T24-01", "T24-02"]);
    const [blanks, ...aside] = records.troubles;
    expect(setAside({ ...records, troubles: aside })).toEqual(["4: heading", "5: heading"]);
    // One variety above blanks may stand for them, or not: it is asked, not guessed.
    expect(blanks).toMatchObject({
      row: null,
      column: "Variety",
      code: "blanks-below",
    });
    expect(records.batches[1]?.variety).toBe("");
  });

  it("are used without a name where they hold more than one cell, and said to have none", () => {
    const records = reading([HEADER, ["", "Alba", "", 100, ""]]);
    expect(records.rows).toEqual({ heading: 1, used: 1, leftOut: 0, notBatches: 0, blank: 0 });
    expect(troublesOf(records)).toEqual(["2 Batch: batch-unnamed"]);
  });

  it("are left out of a log, and counted so, where they name no batch or no step", () => {
    const records = reading([
      ["Day", "Batch", "Step", "Count"],
      ["2026-06-01", "B1", "Grafting", 100],
      ["2026-06-02", "", "Grafting", 90],
      ["2026-06-03", "B1", "Sweeping", ""],
      ["Bay 2"],
      [],
      ["Total", "", "", 190],
      ["2026-07-03", "B1", "Take count", 80],
    ]);
    expect(records.rows).toEqual({ heading: 1, used: 2, leftOut: 2, notBatches: 2, blank: 1 });
    expect(troublesOf(records)).toEqual([
      "3 Batch: line-without-batch",
      "4 Step: line-without-step",
      "5 : no-line",
      "7 : no-line",
    ]);
    expect(leftOut(records)).toEqual([{ code: "rows-left-out", rows: 2 }]);
    expect(atStep(records, 0, "take count")).toEqual({ day: day("2026-07-03"), count: 80 });
  });
});

describe("two columns for one thing", () => {
  it("are named both; the surer one is used", () => {
    const records = reading([
      ["Batch", "Takes counted", "Takes", "Grafts made"],
      ["B1", 1, 80, 100],
    ]);
    expect(atStep(records, 0, "take count").count).toBe(80);
    expect(records.troubles).toMatchObject([
      {
        row: null,
        column: "Takes counted",
        code: "columns-alike",
        used: "Takes",
        readAs: { kind: "step", key: "take count", what: "count" },
      },
    ]);
  });

  it("of one sureness leave the left one in use", () => {
    const records = reading([
      ["Batch", "Clone", "Variety", "Grafts made"],
      ["B1", "left", "right", 100],
    ]);
    expect(records.batches[0]?.variety).toBe("left");
    expect(troublesOf(records)).toEqual(["- Variety: columns-alike"]);
  });

  it("may be a step's day and count under one word, told apart by what they hold", () => {
    const records = reading([
      ["Batch", "Grafted", "Grafting"],
      ["B1", 100, "2026-09-03"],
      ["B2", 90, 46268],
    ]);
    expect(atStep(records, 0, "grafting")).toEqual({ day: day("2026-09-03"), count: 100 });
    expect(atStep(records, 1, "grafting")).toEqual({ day: day("2026-09-03"), count: 90 });
    expect(records.troubles).toEqual([]);
  });
});

describe("columns told by hand", () => {
  const told = (pairs: Record<string, string>) => ({
    told: new Map(Object.entries(pairs).map(([name, header]) => [header, name] as const)),
  });

  it("are used under the header that is named, before one that would be guessed", () => {
    const records = reading(
      [
        ["Batch", "Takes", "Second look", "Grafts made"],
        ["B1", 1, 80, 100],
      ],
      told({ Takes: "Second look" }),
    );
    expect(atStep(records, 0, "take count").count).toBe(80);
    expect(records.troubles).toMatchObject([
      { code: "columns-alike", column: "Takes", used: "Second look" },
    ]);
  });

  it("are found whatever the capitals, accents and spaces of the header", () => {
    const records = reading(
      [
        ["Batch", "  ÉTAT\n2 ", "Grafts made"],
        ["B1", "Alba", 100],
      ],
      told({ Variety: "etat 2" }),
    );
    expect(records.batches[0]?.variety).toBe("Alba");
  });

  it("are enough to find a header of which not one word can be guessed", () => {
    const records = reading(
      [
        ["Our sheet", "", "", ""],
        ["Ref A", "Kind", "When K", "How K"],
        ["B1", "Alba", "2026-09-03", 100],
      ],
      told({ Batch: "Ref A", Variety: "Kind", "Grafted on": "When K", "Grafts made": "How K" }),
    );
    expect(records.batches[0]).toMatchObject({ name: "B1", variety: "Alba", row: 3 });
    expect(atStep(records, 0, "grafting")).toEqual({ day: day("2026-09-03"), count: 100 });
  });

  // People gave one column our name of another, left that other alone, and were refused.
  it("are understood though another header that is told bears the very name", () => {
    const records = reading(
      [
        ["Batch", "Take count day", "Tally day"],
        ["B1", "2026-11-01", "2026-11-21"],
      ],
      told({ "Leave alone": "Take count day", "Take count day": "Tally day" }),
    );
    expect(atStep(records, 0, "take count").day).toBe(day("2026-11-21"));
  });

  // What is told is one table for all tabs, and a log told of takes was refused because of it.
  it("are passed over under a header that the table lacks, and said", () => {
    const records = reading([HEADER, row("B1")], told({ Takes: "Missing" }));
    expect(troublesOf(records)).toContain("- Missing: no-such-header");
    expect(leftOut(records)).toEqual([
      { code: "no-such-headers", columns: [{ header: "Missing", name: "Takes" }] },
    ]);
  });

  it("leave alone a column by a name that is none of ours, and say so", () => {
    const records = reading([HEADER, row("B1")], told({ Moon: "Takes" }));
    expect(troublesOf(records)).toContain("- Takes: no-such-column");
    expect(records.columns.find(({ header }) => header === "Takes")?.target).toBeNull();
  });
});

describe("stepIndex", () => {
  it("is null for a step that the table has no column for", () => {
    const records = reading([HEADER, row("B1")]);
    expect(stepIndex(records, "branching")).toBeNull();
    expect(records.stepKeys[stepIndex(records, "grafting") as number]).toBe("grafting");
  });
});
