import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { csvRows } from "../../samples/csv-rows";
import { reading } from "./reading";

// Source: tests/checks/office-words/SOURCE.md, invented, by someone who had not seen the program.
const MARKS = csvRows(readFileSync("tests/checks/office-words/values.csv", "utf8"))
  .filter(([, , , , , , is]) => is === "the name above")
  .map(([, , , , , spelling]) => spelling as string);

const HEAD = ["Batch", "Variety", "Grafter", "Tape", "Grafted on", "Grafts made"];
const row = (name: string, ...texts: string[]) => [name, ...texts, "2026-09-03", 100];

describe("ditto marks", () => {
  it.each(MARKS)("%j takes the value above", (mark) => {
    const records = reading([
      HEAD,
      row("B1", "Alba", "Kesto", "blue"),
      row("B2", mark, mark, mark),
      row("B3", mark, "Ana", mark),
      row("B4", "Nera", mark, "white"),
    ]);
    const { batches } = records;
    expect(batches.map(({ variety }) => variety)).toEqual(["Alba", "Alba", "Alba", "Nera"]);
    expect(batches.map(({ grafter }) => grafter)).toEqual(["Kesto", "Kesto", "Ana", "Ana"]);
    // A column of the nursery's own too.
    expect(batches.map((batch) => records.textIn(batch, 3))).toEqual([
      ...["blue", "blue", "blue"],
      "white",
    ]);
  });

  it("are said once a column", () => {
    const { troubles } = reading([
      HEAD,
      row("B1", "Alba", "Kesto", "blue"),
      row("B2", "do.", "Ana", "blue"),
      row("B3", "do.", "Ana", "blue"),
    ]);
    const [ofMarks, ...left] = troubles;
    expect(left).toMatchObject([{ code: "column-left" }]);
    expect([ofMarks]).toEqual([
      { row: null, column: "Variety", found: "", code: "ditto-marks", marks: 2 },
    ]);
  });

  it("are no marks where the word is a name, or nothing stands above", () => {
    const { batches } = reading([
      HEAD,
      row("B1", "Alba", "Sama", '"'),
      row("B2", "Nera", "Kesto", "blue"),
      row("B3", "Nera", "Sama", "blue"),
    ]);
    expect(batches.map(({ grafter }) => grafter)).toEqual(["Sama", "Kesto", "Sama"]);
  });

  it("take the line above in a log", () => {
    const { batches } = reading([
      ["Date", "Batch", "Step", "Count", "Person"],
      ["2026-09-03", "B1", "Grafting", 100, "Kesto"],
      ["2026-09-03", "B2", "do.", 80, '"'],
      ["2026-10-05", '"', "Take count", 60, "Ana"],
    ]);
    expect(batches.map(({ name, grafter, counts }) => [name, grafter, ...counts])).toEqual([
      ["B1", "Kesto", 100, null],
      ["B2", "Kesto", 80, 60],
    ]);
  });
});
