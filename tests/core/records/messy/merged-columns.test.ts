import { describe, expect, it } from "vitest";
import { isSaid, names, readTyped } from "./typed-rows";

type Row = readonly (string | number)[];

function varieties(rows: readonly Row[]) {
  const records = readTyped([["Batch", "Variety", "Seeds sown"], ...rows]);
  return { records, read: records.batches.map(({ variety }) => variety) };
}

const AMBERLOW: readonly Row[] = [
  ["B-1", "Amberlow", 120],
  ["B-2", "", 130],
  ["B-3", "", 140],
];
const CORVANE: readonly Row[] = [
  ["B-4", "Corvane", 150],
  ["B-5", "", 160],
  ["B-6", "", 170],
];
const ALL = [...Array(3).fill("Amberlow"), ...Array(3).fill("Corvane")];

describe("a column of merged cells", () => {
  it("is filled down and said", () => {
    const { records, read } = varieties([...AMBERLOW, ...CORVANE]);
    expect(read).toEqual(ALL);
    expect(isSaid(records, { column: "Variety" })).toBe(true);
  });

  // With tables under one another only the last one's header was named, and the blanks of the
  // table above were left without a word.
  it("is said of each table by its own header", () => {
    const records = readTyped([
      ["Batch", "Variety", "Seeds sown"],
      ["B-1", "Amberlow", 120],
      ["B-2", "", 130],
      [],
      ["Batch", "Cultivar", "Seeds sown"],
      ["B-3", "Corvane", 150],
    ]);
    for (const column of ["Variety", "Cultivar"]) {
      expect(isSaid(records, { column })).toBe(true);
    }
  });

  // Cells can't be merged across a heading, so the value is written again below it. People saw
  // the variety of most batches gone, without a word.
  it.each<{ between: Row }>(
    [
      ["Season 2026"],
      [],
      ["Total", "", 710],
      ["Batch", "Variety", "Seeds sown"],
      ["", "", 710],
    ].map((between) => ({ between })),
  )("is filled down where a value is written again below $between", ({ between }) => {
    const { read } = varieties([
      ...AMBERLOW,
      ["B-4", "Corvane", 150],
      ["B-5", "", 170],
      between,
      ["B-6", "Corvane", 180],
      ["B-7", "", 190],
    ]);
    expect(read).toEqual([...Array(3).fill("Amberlow"), ...Array(4).fill("Corvane")]);
  });

  it("takes no heading in its own column for a value", () => {
    const records = readTyped([
      ["Variety", "Batch", "Seeds sown"],
      ["Amberlow", "B-1", 120],
      ["", "B-2", 130],
      ["Bay 2"],
      ["", "B-3", 140],
      ["Corvane", "B-4", 150],
      ["", "B-5", 160],
      ["Total", "", 700],
    ]);
    expect(names(records)).toEqual(["B-1", "B-2", "B-3", "B-4", "B-5"]);
    expect(records.batches.map(({ variety }) => variety)).not.toContain("Bay 2");
  });

  it("is said where it is not filled down, though values stand above blanks", () => {
    const { records, read } = varieties([
      ["B-1", "Amberlow", 120],
      ["B-2", "Brindlecap", 130],
      ["B-3", "Corvane", 140],
      ["B-4", "", 150],
    ]);
    const filled = read[3] === "Corvane";
    expect(filled || read[3] === "").toBe(true);
    expect(isSaid(records, { column: "Variety" }) || isSaid(records, { row: 5 })).toBe(true);
  });

  it("is filled down, or said, where one value stands above all the rows", () => {
    const records = readTyped([
      ["Batch", "Method", "Seeds sown"],
      ["B-1", "Cocoa cleft graft", 120],
      ["B-2", "", 130],
      ["B-3", "", 140],
    ]);
    expect(isSaid(records, { column: "Method" })).toBe(true);
  });

  // People saw seedlings sown in the nursery counted as taken from a lot.
  it("gives no lot to batches that were sown themselves", () => {
    const records = readTyped([
      ["Batch", "From lot", "Sown", "Seeds sown", "Grafted on", "Grafts made"],
      ["G-1", "L-1", "", "", "2026-06-01", 50],
      ["G-2", "", "2026-03-02", 120, "2026-06-02", 100],
      ["G-3", "L-2", "", "", "2026-06-03", 60],
      ["G-4", "", "2026-03-03", 130, "2026-06-04", 110],
      ["G-5", "", "2026-03-04", 140, "2026-06-05", 120],
    ]);
    expect(records.batches.map(({ fromLot }) => fromLot)).toEqual(["L-1", "", "L-2", "", ""]);
  });
});
