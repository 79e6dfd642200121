import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { csvRows } from "../../samples/csv-rows";
import { reading } from "./reading";

// Source: tests/checks/office-words/SOURCE.md, invented, by someone who had not seen the program.
const HEADERS = csvRows(readFileSync("tests/checks/office-words/headers.csv", "utf8"))
  .filter(
    ([, , , , , , meaning, , , , must]) => /^(crop|method)$/.test(`${meaning}`) && must === "right",
  )
  .map(([table, , , , , header, meaning]) => [
    table as string,
    header as string,
    meaning as string,
  ]);

describe("columns of crop and method", () => {
  it.each(HEADERS)("%s: %s holds the %s", (_, header, meaning) => {
    const { columns } = reading([
      ["Batch", header, "Grafted on", "Grafts made"],
      ["B1", "Cocoa", "2026-09-03", 100],
    ]);
    expect(columns[1]?.target).toEqual({ kind: "fact", fact: meaning });
  });

  it("are read beside one another", () => {
    const { batches } = reading([
      ["Batch", "Crop", "Graft type", "Grafted on", "Grafts made"],
      ["B1", "Mango", "Stone", "2026-09-03", 100],
      ["B2", "do.", "Cleft", "2026-09-03", 100],
    ]);
    expect(batches.map(({ crop, method }) => [crop, method])).toEqual([
      ["Mango", "Stone"],
      ["Mango", "Cleft"],
    ]);
  });
});
