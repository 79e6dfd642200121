import { describe, expect, it } from "vitest";
import { textCell } from "../../../src/local/workbook-data";
import { opened, type Sheet, thrown } from "./opened";

const names = (book: Sheet): string[] => book.getSheets().map((sheet: Sheet) => sheet.getName());

describe("Spreadsheet", () => {
  it("finds tabs, and knows its name and the one in front", () => {
    const { book } = opened();
    expect(book.getName()).toBe("Trial");
    expect(book.getId()).toEqual(expect.any(String));
    expect(names(book)).toEqual(["Main", "Other"]);
    expect(book.getSheetByName("Nowhere")).toBeNull();
    expect(book.getActiveSheet().getName()).toBe("Main");
    expect(book.getRange("Other!B2:C3").getSheet().getName()).toBe("Other");
    expect(book.getRange("B2").getSheet().getName()).toBe("Main");
    expect(thrown(() => book.getRange("Nowhere!A1")).message).toBe("Range not found");
  });

  it("adds tabs of 1000 rows and 26 columns, in front, behind the one that was", () => {
    const { book } = opened();
    const made = book.insertSheet("Due");
    expect(names(book)).toEqual(["Main", "Due", "Other"]);
    expect(book.getActiveSheet().getName()).toBe("Due");
    expect([made.getMaxRows(), made.getMaxColumns(), made.getLastRow()]).toEqual([1000, 26, 0]);
    book.insertSheet("First", 0);
    expect(names(book)).toEqual(["First", "Main", "Due", "Other"]);
    book.moveActiveSheet(4);
    expect(names(book)).toEqual(["Main", "Due", "Other", "First"]);
    expect(made.getIndex()).toBe(2);
  });

  it("refuses a name that is taken", () => {
    const { book, main } = opened();
    // Source: messages quoted in public repositories.
    const message = 'A sheet with the name "Other" already exists. Please enter another name.';
    expect(thrown(() => book.insertSheet("Other"))).toEqual({ name: "Exception", message });
    expect(thrown(() => main.setName("Other")).message).toBe(message);
    expect(names(book)).toEqual(["Main", "Other"]);
    main.setName("main");
    expect(names(book)).toEqual(["main", "Other"]);
  });

  it("deletes tabs but not the last one, and formulas feel it", async () => {
    const { book, main, workbook } = opened();
    const other = book.getSheetByName("Other");
    other.getRange("A1").setValue(5);
    main.getRange("A1").setFormula("=Other!A1*2");
    await workbook.settled();
    expect(main.getRange("A1").getValue()).toBe(10);
    other.setName("Own '26");
    await workbook.settled();
    expect(main.getRange("A1").getFormula()).toBe("='Own ''26'!A1*2");
    other.activate();
    book.deleteSheet(other);
    await workbook.settled();
    expect(main.getRange("A1").getValue()).toBe("#REF!");
    expect(book.getActiveSheet().getName()).toBe("Main");
    expect(thrown(() => book.deleteSheet(main)).name).toBe("Exception");
    expect(thrown(() => other.getName())).toEqual({
      name: "Exception",
      message: "Sheet 1 not found",
    });
  });
});

describe("Sheet", () => {
  it("has an empty data range of one blank cell", () => {
    const { main } = opened();
    expect([main.getLastRow(), main.getLastColumn()]).toEqual([0, 0]);
    expect(main.getDataRange().getValues()).toEqual([[""]]);
  });

  it("counts content from A1 on: formulas that show nothing, spills and unticked boxes, not formats", async () => {
    const { main, workbook } = opened();
    main.getRange("J20").setBackground("#ff0000");
    expect(main.getLastRow()).toBe(0);
    main.getRange("B3").setValue("x");
    expect(main.getDataRange().getA1Notation()).toBe("A1:B3");
    main.getRange("C4").setFormula('=""');
    expect(main.getDataRange().getA1Notation()).toBe("A1:C4");
    main.getRange("D1").setFormula("=SEQUENCE(6,2)");
    await workbook.settled();
    expect(main.getDataRange().getA1Notation()).toBe("A1:E6");
    expect(main.getRange("D5:E6").getValues()).toEqual([
      [9, 10],
      [11, 12],
    ]);
    main.getRange("A8").insertCheckboxes();
    expect(main.getLastRow()).toBe(8);
  });

  it("appends a row after the last one, and grows when the tab is full", () => {
    const { main } = opened();
    main.appendRow(["a", 1]);
    main.appendRow(["b", 2]);
    expect(main.getDataRange().getValues()).toEqual([
      ["a", 1],
      ["b", 2],
    ]);
    main.getRange("A1000").setValue("end");
    main.appendRow(["after"]);
    expect([main.getMaxRows(), main.getRange("A1001").getValue()]).toEqual([1001, "after"]);
  });

  it("takes rows and columns in and out, and formulas follow", async () => {
    const { main, workbook } = opened({
      rows: [[textCell("a")], [textCell("b")], [textCell("c")]],
    });
    main.getRange("C1").setFormula("=A3");
    main.insertRowsAfter(1, 2);
    expect(main.getRange("A1:A5").getValues().flat()).toEqual(["a", "", "", "b", "c"]);
    main.insertColumnsAfter(1, 1);
    await workbook.settled();
    expect(main.getRange("D1").getFormula()).toBe("=A5");
    expect([main.getMaxRows(), main.getMaxColumns()]).toEqual([1002, 27]);
    main.deleteRows(2, 2);
    expect(main.getRange("A1:A3").getValues().flat()).toEqual(["a", "b", "c"]);
    expect(thrown(() => main.deleteRows(1, 1001)).name).toBe("Exception");
    expect(thrown(() => main.insertRowsAfter(0, 1)).message).toBe("Those rows are out of bounds.");
  });

  it("freezes, widens, hides and colours", () => {
    const { main, book } = opened();
    main.setFrozenRows(2);
    main.setFrozenColumns(1);
    expect([main.getFrozenRows(), main.getFrozenColumns()]).toEqual([2, 1]);
    main.setFrozenRows(0);
    expect([main.getFrozenRows(), main.getFrozenColumns()]).toEqual([0, 1]);
    main.setColumnWidth(1, 222);
    main.setColumnWidths(2, 2, 60);
    expect([1, 2, 3].map((column) => main.getColumnWidth(column))).toEqual([222, 60, 60]);
    main.hideSheet();
    expect([main.isSheetHidden(), book.getActiveSheet().getName()]).toEqual([true, "Other"]);
    expect(thrown(() => book.getSheetByName("Other").hideSheet()).name).toBe("Exception");
    main.showSheet();
    expect([main.isSheetHidden(), book.getActiveSheet().getName()]).toEqual([false, "Other"]);
    main.setTabColor("#336699");
    main.setTabColor(null);
  });

  it("clears its content, or everything", () => {
    const { main } = opened();
    main.getRange("B2").setNumberFormat("0.00").setValue(3);
    main.clearContents();
    expect([main.getLastRow(), main.getRange("B2").getNumberFormat()]).toEqual([0, "0.00"]);
    main.getRange("B2").setValue(3);
    main.clear();
    expect([main.getLastRow(), main.getRange("B2").getNumberFormat()]).toEqual([0, ""]);
  });

  it("has a number that stays, and the first tab has 0", () => {
    const { book, main } = opened();
    const made = book.insertSheet("New", 0);
    expect([main.getSheetId(), book.getSheetByName("Other").getSheetId()]).toEqual([0, 1]);
    expect(made.getSheetId()).toBe(2);
  });
});
