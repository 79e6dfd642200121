import { describe, expect, it } from "vitest";
import { numberCell, textCell } from "../../../src/local/workbook-data";
import { opened, thrown } from "./opened";

describe("Range values", () => {
  it("gives back at once what was written, blanks as ''", () => {
    const { main } = opened();
    const values = [
      ["a", 1.5, true, ""],
      ["b", "", false, "x"],
    ];
    main.getRange(2, 2, 2, 4).setValues(values);
    expect(main.getRange(2, 2, 2, 4).getValues()).toEqual(values);
    expect(main.getRange("A1:B2").getValues()).toEqual([
      ["", ""],
      ["", "a"],
    ]);
    expect([main.getRange("A1").isBlank(), main.getRange("B2").isBlank()]).toEqual([true, false]);
  });

  it("shows values as the format and the locale say", () => {
    const { main } = opened({ locale: "fr_FR" });
    main.getRange("A1:A5").setValues([[0.25], [1234.5], [true], ["x"], [""]]);
    main.getRange("A1").setNumberFormat("0%");
    main.getRange("A2").setNumberFormat("#,##0.00");
    const shown = main.getRange("A1:A5").getDisplayValues().flat();
    expect(shown.map((text: string) => text.replace(/\s/g, " "))).toEqual([
      "25%",
      "1 234,50",
      "TRUE",
      "x",
      "",
    ]);
  });

  it("writes one value everywhere, clears content and keeps the format", () => {
    const { main } = opened();
    main.getRange("B2:C3").setNumberFormat("0.00").setValue(7);
    expect(main.getRange("B2:C3").getValues()).toEqual([
      [7, 7],
      [7, 7],
    ]);
    main.getRange("B2:C2").clearContent();
    expect(main.getRange("B2:B3").getDisplayValues()).toEqual([[""], ["7.00"]]);
    expect(main.getRange("B2").getNumberFormat()).toBe("0.00");
    main.getRange("B3:C3").clear();
    expect([main.getRange("B3").getValue(), main.getRange("B3").getNumberFormat()]).toEqual([
      "",
      "",
    ]);
  });

  it("makes a number that is none into #NUM!, and null into a blank", () => {
    const { main } = opened();
    main.getRange("A1:C1").setValues([[Number.NaN, null, undefined]]);
    expect(main.getRange("A1:C1").getValues()).toEqual([["#NUM!", "", ""]]);
  });

  it("reads errors as their text and numbers in text cells as text", () => {
    const { main } = opened({ rows: [[textCell("#N/A"), numberCell(7, "@")]] });
    expect(main.getRange("A1:B1").getValues()).toEqual([["#N/A", "7"]]);
  });

  it("calculates formulas after the script, not within it", async () => {
    const { main, workbook } = opened();
    main.getRange("A1:A2").setValues([[2], [3]]);
    main.getRange("B1").setFormula("=SUM(A1:A2)");
    main.getRange("B2").setFormulas([["=A1*10"]]);
    expect(main.getRange("B1").getValue()).toBe("");
    expect(main.getRange("B1:B2").getFormulas()).toEqual([["=SUM(A1:A2)"], ["=A1*10"]]);
    await workbook.settled();
    expect(main.getRange("A1:B2").getValues()).toEqual([
      [2, 5],
      [3, 20],
    ]);
    main.getRange("A1").setValue(10);
    await workbook.settled();
    expect(main.getRange("B1").getValue()).toBe(13);
    main.getRange("B1").setValue(1);
    expect(main.getRange("B1").getFormula()).toBe("");
  });

  it("moves about: offset, names, counts", () => {
    const { main } = opened();
    const range = main.getRange("B2:C4").offset(1, 2, 2, 1);
    expect(range.getA1Notation()).toBe("D3:D4");
    expect(main.getRange("$Z$10").getA1Notation()).toBe("Z10");
    expect(main.getRange("C:D").getA1Notation()).toBe("C1:D1000");
    expect([
      range.getRow(),
      range.getColumn(),
      range.getNumRows(),
      range.getNumColumns(),
      range.getLastRow(),
      range.getLastColumn(),
      range.getSheet().getName(),
    ]).toEqual([3, 4, 2, 1, 4, 4, "Main"]);
  });

  it("selects cells", () => {
    const { main, book } = opened();
    main.getRange("B2:C3").activate();
    book.getSheetByName("Other").getRange("D5").activate();
    expect(book.getActiveSheet().getName()).toBe("Other");
    expect(book.getActiveCell().getA1Notation()).toBe("D5");
    book.setActiveSheet(main);
    expect(book.getActiveRange().getA1Notation()).toBe("B2:C3");
  });
});

describe("what a range refuses", () => {
  // The sentences: quoted in public repositories that meet them.
  it("wants as many rows and columns as it has", () => {
    const { main } = opened();
    const range = main.getRange(1, 1, 2, 2);
    expect(thrown(() => range.setValues([[1, 2]]))).toEqual({
      name: "Exception",
      message:
        "The number of rows in the data does not match the number of rows in the range. The data has 1 but the range has 2.",
    });
    expect(thrown(() => range.setValues([[1, 2], [3]])).message).toBe(
      "The number of columns in the data does not match the number of columns in the range. The data has 1 but the range has 2.",
    );
    expect(main.getLastRow()).toBe(0);
  });

  it.each([
    [[0, 1], "The starting row of the range is too small."],
    [[1, 0], "The starting column of the range is too small."],
    [[2, 1, 0, 3], "The number of rows in the range must be at least 1."],
    [[2, 1, 3, 0], "The number of columns in the range must be at least 1."],
    [[1001, 1], "The coordinates of the range are outside the dimensions of the sheet."],
    [[1, 27], "The coordinates of the range are outside the dimensions of the sheet."],
  ])("getRange(%j): %s", (cell, message) => {
    const { main } = opened();
    expect(thrown(() => main.getRange(...cell))).toEqual({ name: "Exception", message });
  });

  it("names the method that was called with the wrong kind of thing", () => {
    const { main } = opened();
    expect(thrown(() => main.getRange("A1").setValues("x")).message).toBe(
      "The parameters (String) don't match the method signature for SpreadsheetApp.Range.setValues.",
    );
    expect(thrown(() => main.getRange("A1").setValue({ a: 1 })).name).toBe("Exception");
    expect(thrown(() => main.getRange("nonsense")).message).toBe("Range not found");
  });

  it("takes texts of 50,000 characters and no longer ones", () => {
    const { main } = opened();
    main.getRange("A1").setValue("x".repeat(50_000));
    expect(main.getRange("A1").getValue()).toHaveLength(50_000);
    expect(thrown(() => main.getRange("A1").setValue("x".repeat(50_001))).message).toMatch(/50000/);
  });

  it("writes nothing when one of the values is refused", () => {
    const { main } = opened();
    expect(thrown(() => main.getRange("A1:B1").setValues([["ok", { a: 1 }]])).name).toBe(
      "Exception",
    );
    expect(main.getRange("A1").getValue()).toBe("");
  });
});
