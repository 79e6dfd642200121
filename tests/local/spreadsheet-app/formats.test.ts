import type { Nullable } from "@univerjs/core";
import { describe, expect, it } from "vitest";
import { opened, type Sheet, thrown } from "./opened";

/** The engine's own record of how a cell looks. */
function look(workbook: ReturnType<typeof opened>["workbook"], row: number, column: number) {
  const sheet = workbook.book.workbook.getSheetBySheetName("Main");
  const cell: Nullable<object> = sheet?.getCellMatrix().getValue(row, column);
  return workbook.book.workbook.getStyles().getStyleByCell(cell) ?? {};
}

describe("how cells look", () => {
  it("sets weight, colours, wrapping and alignment, and chains", () => {
    const { main, workbook } = opened();
    const range = main.getRange("A1:B1");
    expect(
      range
        .setFontWeight("bold")
        .setFontColor("#112233")
        .setBackground("#ddeeff")
        .setWrap(true)
        .setHorizontalAlignment("right")
        .setVerticalAlignment("middle"),
    ).toBe(range);
    // Numbers as the engine has them: bold 1, wrap 3, right 3, middle 2.
    expect(look(workbook, 0, 1)).toMatchObject({
      bl: 1,
      cl: { rgb: "#112233" },
      bg: { rgb: "#ddeeff" },
      tb: 3,
      ht: 3,
      vt: 2,
    });
    range.setBackground(null).setFontWeight("normal");
    expect(look(workbook, 0, 0)).not.toHaveProperty("bg");
    expect(thrown(() => range.setFontWeight("heavy")).message).toBe(
      "The parameters (String) don't match the method signature for SpreadsheetApp.Range.setFontWeight.",
    );
  });

  it("sets number formats one by one", () => {
    const { main } = opened();
    main.getRange("A1:B1").setNumberFormats([["0.0", "0%"]]);
    main.getRange("A1:B1").setValues([[1, 0.5]]);
    expect(main.getRange("A1:B1").getDisplayValues()).toEqual([["1.0", "50%"]]);
    expect(thrown(() => main.getRange("A1:B1").setNumberFormats([["0"]])).message).toMatch(
      /columns/,
    );
  });

  it("keeps notes through writing and moving", () => {
    const { main } = opened();
    main.getRange("A2").setNote("seen on the bench").setValue(4);
    main.getRange("A2").setValue(5);
    main.insertRowsAfter(1, 1);
    expect([main.getRange("A3").getNote(), main.getRange("A2").getNote()]).toEqual([
      "seen on the bench",
      "",
    ]);
    main.getRange("A3").setNote(null);
    expect(main.getRange("A3").getNote()).toBe("");
  });
});

describe("tick boxes and lists", () => {
  // Source: developers.google.com/apps-script/reference/spreadsheet/range, insertCheckboxes and
  // removeCheckboxes.
  it("starts tick boxes as false, and takes them away with their values", () => {
    const { main, app } = opened();
    main.getRange("A1:A3").insertCheckboxes();
    expect(main.getRange("A1:A3").getValues().flat()).toEqual([false, false, false]);
    main.getRange("A2").setValue(true);
    main.getRange("B1").setValue(true);
    expect(main.getRange("A1:A3").getValues().flat()).toEqual([false, true, false]);
    main.getRange("A3").setValue("yes");
    expect(thrown(() => app.flush())).toEqual({
      name: "Exception",
      message:
        "The data you entered in cell A3 violates the data validation rules set on this cell.",
    });
    main.getRange("A1:B3").removeCheckboxes();
    expect(main.getRange("A1:B2").getValues()).toEqual([
      ["", true],
      ["", ""],
    ]);
    main.getRange("A3").setValue("yes");
  });

  it("refuses what a strict list lacks, and lets a mild one pass", () => {
    const { main, app } = opened();
    const rule = (allowInvalid: boolean) =>
      app
        .newDataValidation()
        .requireValueInList(["Bench 1", "Bench, 2"], true)
        .setAllowInvalid(allowInvalid)
        .build();
    main.getRange("A1:A2").setDataValidation(rule(false));
    main.getRange("B1").setDataValidation(rule(true));
    main.getRange("A1:A2").setValues([["Bench 1"], ["Bench, 2"]]);
    main.getRange("A1").setValue("");
    main.getRange("A1:B1").setValues([["x", "y"]]);
    expect(thrown(() => app.flush()).message).toMatch(/cell A1 /);
    expect(main.getRange("A1:B1").getValues()).toEqual([["", ""]]);
    main.getRange("B1").setValue("x");
    main.getRange("A1:A2").setDataValidation(null);
    main.getRange("A1").setValue("x");
    expect(main.getRange("A1:B1").getValues()).toEqual([["x", "x"]]);
  });

  it("takes a rule for tick boxes too, without values", () => {
    const { main, app } = opened();
    const rule = app.newDataValidation().requireCheckbox().build();
    main.getRange("C1").setDataValidation(rule);
    expect(main.getRange("C1").getValue()).toBe("");
    main.getRange("C1").setValue(true);
    main.getRange("C1").removeCheckboxes();
    expect(main.getRange("C1").getValue()).toBe("");
    expect(thrown(() => main.getRange("C1").setDataValidation({} as Sheet)).name).toBe("Exception");
  });
});
