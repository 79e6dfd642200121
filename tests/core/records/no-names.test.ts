import { describe, expect, it } from "vitest";
import { builtInTimetable } from "../../../src/core/timetable/read-timetable";
import { toldWords } from "../../../src/core/timetable/told-words";
import { reading, toldAs } from "./reading";

/** What is read of a column of varieties, rows apart from the others in nothing. */
const varietiesOf = (cells: readonly string[]) => {
  const rows = cells.map((cell, at) => [`B${at}`, cell, "?", "2026-03-01", 100]);
  const { batches } = reading([
    ["Batch", "Variety", "Method", "Grafted on", "Grafts made"],
    ...rows,
  ]);
  return batches.map(({ variety }) => variety);
};

describe("a cell that names nobody", () => {
  // A bed of "?" or "mixed" was a variety of its own, compared with the others.
  it.each([
    ["?"],
    ["-"],
    ["n/a"],
    ["Unknown"],
    ["MIXED"],
    ["inconnue"],
    ["sin nombre"],
    ["não se sabe"],
    ["campuran"],
    ["xxx"],
    ["casuals"],
    ["stagiaires"],
    ["diaristas"],
  ])("is as good as blank: %s", (cell) => {
    expect(varietiesOf(["Amberlow", cell, "Amberlow"])).toEqual(["Amberlow", "", "Amberlow"]);
  });

  it("is listed where a word says so, since it may be somebody's name; a sign is not", () => {
    const { troubles } = reading([
      ["Batch", "Variety", "Grafted on", "Grafts made"],
      ["B1", "Mixed", "2026-03-01", 100],
      ["B2", "-", "2026-03-01", 100],
      ["B3", "Mixed", "2026-03-01", 100],
    ]);
    const listed = {
      column: "Variety",
      found: "Mixed",
      code: "cell-read-as",
      readAs: { code: "nobody" },
    };
    expect(troubles).toEqual([2, 4].map((row) => ({ row, ...listed })));
  });

  it("is no name that only holds such a word", () => {
    expect(varietiesOf(["Mixed Ella", "Nona", "No 4"])).toEqual(["Mixed Ella", "Nona", "No 4"]);
  });

  it("is the name that a person has told it to be", () => {
    const words = toldWords(toldAs("Local", "Local red"), builtInTimetable());
    const { batches, troubles } = reading(
      [
        ["Batch", "Rootstock", "Grafted on", "Grafts made"],
        ["B1", "Local", "2026-03-01", 100],
        ["B2", "Mixed", "2026-03-01", 100],
      ],
      { words },
    );
    expect(batches.map(({ rootstock }) => rootstock)).toEqual(["Local red", ""]);
    expect(troubles.map(({ row }) => row)).toEqual([3]);
  });

  it("is no blank where it stands for the method", () => {
    const { batches } = reading([
      ["Batch", "Variety", "Method", "Grafted on", "Grafts made"],
      ["B1", "Amberlow", "?", "2026-03-01", 100],
    ]);
    expect(batches[0]?.method).toBe("?");
  });
});
