import { describe, expect, it } from "vitest";
import { withFormats } from "../../src/local/result-tabs";
import type { Cell, SheetCells } from "../../src/local/sheet-cells";

const cell = (value: string | number, pattern = ""): Cell => ({ value, pattern }) as Cell;

/** A calculated tab: heading, formula, a blank line, header, then the rows. */
function tab(header: readonly string[], rows: readonly (readonly (Cell | null)[])[]): SheetCells {
  return {
    rows: [[cell("Heading")], [cell("made by")], [], header.map((name) => cell(name)), ...rows],
  } as unknown as SheetCells;
}

const patterns = (sheet: SheetCells, column: number) =>
  sheet.rows.slice(4).map((row) => row[column]?.pattern);

describe("the formats of a calculated tab", () => {
  it("writes a column's hours all to the same decimals", () => {
    const rows = [
      [cell(2), cell(3)],
      [cell(0.4), cell(12)],
      [null, cell("none")],
    ];
    const shown = withFormats(tab(["Hours", "Plants"], rows), []);
    expect(patterns(shown, 0)).toEqual(["0.0", "0.0", undefined]);
    expect(patterns(shown, 1)).toEqual(["", "", ""]);
  });

  it("keeps at most two decimals, shares as per cent and days as days", () => {
    const rows = [[cell(18.409_312), cell(0.5), cell(46_000, "yyyy-mm-dd")]];
    const shown = withFormats(tab(["Batch spread", "Take rate", "From"], rows), ["Take rate"]);
    expect([0, 1, 2].map((column) => patterns(shown, column)[0])).toEqual([
      "0.00",
      "0.0%",
      "yyyy-mm-dd",
    ]);
  });
});
