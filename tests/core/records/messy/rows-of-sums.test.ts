import { describe, expect, it } from "vitest";
import { isSaid, names, readTyped } from "./typed-rows";

describe("rows of sums", () => {
  // People saw a batch called "Total" with all the plants of the nursery.
  it.each([
    ["under the names", ["", 250, "Total", 200]],
    ["left of the first sum", ["Total", 250, "", 200]],
    ["left of a later sum", ["", "", "Jumlah", 200]],
    ["between the sums", ["", 250, "TOTAL GENERAL", 200]],
  ])("are known by a word %s", (_, sums) => {
    const records = readTyped([
      ["Place", "Seeds sown", "Batch", "Germinated"],
      ["Bay 1", 120, "B-1", 90],
      ["Bay 2", 130, "B-2", 110],
      sums,
    ]);
    expect(names(records)).toEqual(["B-1", "B-2"]);
    expect(isSaid(records, { row: 4 })).toBe(true);
  });

  it("are known by their numbers where the header was repeated above them", () => {
    const records = readTyped([
      ["Batch", "Seeds sown", "Germinated"],
      ["B-1", 120, 90],
      ["B-2", 130, 110],
      ["Batch", "Seeds sown", "Germinated"],
      ["B-3", 140, 120],
      ["", 390, 320],
    ]);
    expect(names(records)).toEqual(["B-1", "B-2", "B-3"]);
  });
});

describe("lines below a table", () => {
  // People saw a batch called "Signed".
  it.each([
    [["Signed", "", "Kesto"]],
    [["Remarks:", "Bay 2 floods in June."]],
    [["Source of seed", "own trees"]],
  ])("are no batch without a word: %j", (line) => {
    const records = readTyped([
      ["Batch", "Variety", "Place", "Sown", "Seeds sown"],
      ["B-1", "Amberlow", "Bay 1", "2026-03-02", 120],
      ["B-2", "Corvane", "Bay 2", "2026-03-09", 130],
      [],
      line,
    ]);
    if (names(records).length > 2) expect(isSaid(records, { row: 5 })).toBe(true);
    else expect(names(records)).toEqual(["B-1", "B-2"]);
  });
});

describe("tables beside one another", () => {
  // People saw the function fail, since a cell in the gap belongs to neither table.
  it("account for a row that holds nothing but a note in the gap between them", () => {
    const records = readTyped([
      ["Batch", "Sown", "", "Batch", "Grafted on"],
      ["B-1", "2026-03-02", "", "G-1", "2026-06-02"],
      ["", "", "ask K.", "", ""],
    ]);
    expect(names(records).sort()).toEqual(["B-1", "G-1"]);
    expect(isSaid(records, { row: 3 })).toBe(true);
  });
});
