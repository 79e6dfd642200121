import { describe, expect, it } from "vitest";
import { gridOf } from "../../../src/core/cells/cell";
import { filledRows, headedTable } from "../../../src/core/tables/headed-table";

const WORDS = { item: ["item", "what"], price: ["price", "cost"], per: ["per"] };
const table = (rows: (string | number)[][]) => headedTable(gridOf(rows), WORDS, ["item", "price"]);

describe("headedTable", () => {
  it("finds its columns below title lines, in any order, beside columns it does not know", () => {
    const found = table([
      ["Prices of the season"],
      [],
      ["Who", "COST", "  Item\n"],
      ["x", 2, "bag"],
      ["", "", ""],
      ["y", 3, "tape"],
    ]);
    expect(found?.headerRow).toBe(2);
    expect(found?.columnOf).toEqual({ price: 1, item: 2 });
    expect(found?.rows).toEqual([3, 5]);
    expect([found?.cell(5, "item"), found?.cell(5, "price"), found?.cell(5, "per")]).toEqual([
      "tape",
      3,
      "",
    ]);
  });

  it("takes the row that names most", () => {
    const rows = [
      ["Item", "Price"],
      ["Item", "Price", "Per"],
    ];
    expect(table(rows)?.headerRow).toBe(1);
  });

  it("takes the left one of two columns of one name", () => {
    expect(table([["Item", "Price", "Cost"]])?.columnOf).toEqual({ item: 0, price: 1 });
  });

  it("is nothing without a column that must be there, or below the tenth row", () => {
    expect(table([["Item", "Per"]])).toBeNull();
    expect(table([])).toBeNull();
    const tenth = Array.from({ length: 9 }, (): string[] => []);
    expect(table([...tenth, ["Item", "Price"]])?.headerRow).toBe(9);
    expect(table([...tenth, [], ["Item", "Price"]])).toBeNull();
  });
});

describe("filledRows", () => {
  it("lists the rows that hold anything, 0 and false too", () => {
    const grid = gridOf([["head"], [""], [0], [" "], ["", false], ["x"]]);
    expect(filledRows(grid, 1)).toEqual([2, 4, 5]);
  });
});
