import { describe, expect, it } from "vitest";
import { numberCell, textCell } from "../../../src/local/workbook-data";
import { opened, type Sheet, thrown } from "./opened";

/** Made anew each time: the engine changes what it is given. */
const rows = () =>
  [
    ["Place", "Plants"],
    ["Bay 2", 5],
    ["Bay 1", 30],
    ["Bay 2", 4],
  ].map((row) => row.map((cell) => (typeof cell === "number" ? numberCell(cell) : textCell(cell))));

const hiding = (app: Sheet, ...texts: string[]) =>
  app.newFilterCriteria().setHiddenValues(texts).build();
const valuesOf = (main: Sheet) => main.getDataRange().getValues();
const numbers = (main: Sheet) =>
  valuesOf(main)
    .slice(1)
    .map((row: unknown[]) => row[1]);

describe("rows and columns that are hidden", () => {
  it("by hand are told, and read and written as all others", () => {
    const { main } = opened({ rows: rows() });
    main.hideRows(2, 2);
    main.hideColumns(1);
    expect([1, 2, 3, 4].map((row) => main.isRowHiddenByUser(row))).toEqual([
      ...[false, true, true, false],
    ]);
    expect([main.isColumnHiddenByUser(1), main.isColumnHiddenByUser(2)]).toEqual([true, false]);
    main.getRange("A2:B3").setValues([
      ["Bay 4", 1],
      ["Bay 5", 2],
    ]);
    expect(numbers(main)).toEqual([1, 2, 4]);
    main.insertRowsBefore(1, 1);
    expect([2, 3, 4].map((row) => main.isRowHiddenByUser(row))).toEqual([false, true, true]);
    main.showRows(1, 5);
    expect(main.isRowHiddenByUser(3)).toBe(false);
    expect(thrown(() => main.hideRows(0)).message).toBe("Those rows are out of bounds.");
  });

  it("by a filter are read, and stay hidden where they were until it looks again", () => {
    const { main, app } = opened({ rows: rows() });
    const filter = main.getRange("A1:B4").createFilter();
    filter.setColumnFilterCriteria(1, hiding(app, "Bay 2"));
    const hidden = () => [1, 2, 3, 4, 5].map((row) => main.isRowHiddenByFilter(row));
    expect(hidden()).toEqual([false, true, false, true, false]);
    expect(valuesOf(main)).toHaveLength(4);
    main.getRange("A2").setValue("Bay 1");
    expect(hidden()).toEqual([false, true, false, true, false]);
    main.insertRowsBefore(1, 1);
    expect(hidden()).toEqual([false, false, true, false, true]);
    expect(main.getFilter().getRange().getA1Notation()).toBe("A2:B5");
    expect([...filter.getColumnFilterCriteria(1).getHiddenValues()]).toEqual(["Bay 2"]);
    expect(filter.getColumnFilterCriteria(2)).toBeNull();
    expect(thrown(() => main.getRange("A1").createFilter()).message).toMatch(
      /already has a filter/,
    );
    main.getFilter().remove();
    expect(main.getFilter()).toBeNull();
    expect(hidden()).toEqual([false, false, false, false, false]);
  });

  it.each([
    [false, [50, 60, 70]],
    [true, [5, 60, 4]],
  ])("by a filter take what a script writes, or not: the host can be told (%s)", (kept, after) => {
    const { main, app } = opened({ rows: rows(), keepsFiltered: kept });
    main.getRange("A1:B4").createFilter().setColumnFilterCriteria(1, hiding(app, "Bay 2"));
    main.getRange("B2:B4").setValues([[50], [60], [70]]);
    expect(numbers(main)).toEqual(after);
  });
});

describe("sorting", () => {
  it("moves whole rows, formulas with them, and leaves blanks last", () => {
    const { main } = opened({ rows: rows() });
    main.getRange("C2").setFormula("=B2*2");
    main.getRange("C4").setFormula("=$B$4+B4");
    main.getRange("A2:C6").sort(2);
    expect(numbers(main)).toEqual([4, 5, 30]);
    expect(main.getRange("C2:C4").getFormulas()).toEqual([["=$B$4+B2"], ["=B3*2"], [""]]);
    main.getRange("A2:C6").sort([{ column: 1, ascending: false }, { column: 2 }]);
    expect(valuesOf(main).map((row: unknown[]) => row[0])).toEqual([
      ...["Place", "Bay 2", "Bay 2", "Bay 1"],
    ]);
  });

  it("of a whole tab leaves frozen rows where they are", () => {
    const { main } = opened({ rows: rows() });
    main.setFrozenRows(1);
    main.sort(2, false);
    expect(numbers(main)).toEqual([30, 5, 4]);
    expect(main.getRange("A1").getValue()).toBe("Place");
  });

  it("rows are moved whole, and references follow", () => {
    const { main } = opened({ rows: rows() });
    main.getRange("D1").setFormula("=B4");
    main.moveRows(main.getRange("A4"), 2);
    expect(numbers(main)).toEqual([4, 5, 30]);
    expect(main.getRange("D1").getFormula()).toBe("=B2");
  });
});
