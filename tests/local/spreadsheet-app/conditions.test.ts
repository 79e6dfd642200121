/*
 * Longer than most: all that the spreadsheet refuses, condition by condition, in one list to look
 * it up in.
 */
import { describe, expect, it } from "vitest";
import { numberCell, textCell } from "../../../src/local/workbook-data";
import { opened, type Sheet, thrown } from "./opened";

// The sources of the sentences stand where they are thrown.
const PROTECTED =
  "You are trying to edit a protected cell or object. Please contact the spreadsheet owner to remove protection if you need to edit.";
const INVALID = (cell: string) =>
  `The data you entered in cell ${cell} violates the data validation rules set on this cell.`;

const owner = (workbook: ReturnType<typeof opened>["workbook"], tab = "Main"): Sheet =>
  // biome-ignore lint/suspicious/noExplicitAny: a script has no types either
  (workbook.uncounted() as any).SpreadsheetApp.getActive().getSheetByName(tab);

describe("a tab without cells", () => {
  it.each(["OBJECT", "DATASOURCE"] as const)(
    "of kind %s has a name and throws at cells",
    (kind) => {
      const { workbook, book, app } = opened();
      workbook.conditions.tabWithoutCells("Chart", kind);
      const types = book.getSheets().map((sheet: Sheet) => sheet.getType());
      expect(types).toEqual(["GRID", "GRID", kind]);
      // biome-ignore lint/suspicious/noExplicitAny: a script has no types either
      expect(types[2]).toBe((app as any).SheetType[kind]);
      const chart = book.getSheetByName("Chart");
      expect([chart.getName(), chart.getIndex(), chart.isSheetHidden()]).toEqual([
        "Chart",
        3,
        false,
      ]);
      const calls: ((sheet: Sheet) => unknown)[] = [
        (sheet) => sheet.getRange(1, 1),
        (sheet) => sheet.getRange("A1"),
        (sheet) => sheet.getDataRange(),
        (sheet) => sheet.getLastRow(),
        (sheet) => sheet.getMaxRows(),
        (sheet) => sheet.appendRow(["x"]),
        (sheet) => sheet.clear(),
        (sheet) => sheet.setFrozenRows(1),
        (sheet) => sheet.setColumnWidth(1, 50),
        () => book.getRange("Chart!A1"),
      ];
      for (const call of calls) {
        expect(thrown(() => call(chart))).toEqual({
          name: "Exception",
          message: `The action is not supported for ${kind} sheet.`,
        });
      }
      chart.activate();
      expect([book.getActiveSheet().getName(), book.getActiveRange()]).toEqual(["Chart", null]);
      chart.setName("Picture");
      book.deleteSheet(chart);
      expect(book.getSheets()).toHaveLength(2);
    },
  );

  it("is kept in a saved workbook", () => {
    const { workbook } = opened();
    workbook.conditions.tabWithoutCells("Chart");
    const saved = workbook.book.workbook.save();
    expect(Object.values(saved.sheets).map((sheet) => sheet.custom?.tabRules?.kind)).toEqual([
      undefined,
      undefined,
      "OBJECT",
    ]);
  });
});

describe("writes that are refused", () => {
  const asked = (lateRefusals?: "alone" | "rest" | "never") => {
    const all = opened({ ...(lateRefusals ? { lateRefusals } : {}) });
    all.workbook.conditions.protect("Main", "B2:B3");
    return all;
  };

  it("are heard of at flush, and what was written besides is there", () => {
    const { main, app } = asked();
    main.getRange("A1").setValue("before");
    main.getRange("B2").setValue("refused");
    main.getRange("A2:B2").setValues([["refused", "too"]]);
    main.getRange("A3").setValue("after");
    expect(thrown(() => app.flush())).toEqual({ name: "Exception", message: PROTECTED });
    app.flush();
    expect(main.getRange("A1:B3").getValues()).toEqual([
      ["before", ""],
      ["", ""],
      ["after", ""],
    ]);
  });

  const looks: readonly [string, (main: Sheet) => unknown][] = [
    ["getValues", (main) => main.getRange("A1").getValues()],
    ["getValue", (main) => main.getRange("A1").getValue()],
    ["getFormula", (main) => main.getRange("A1").getFormula()],
    ["isBlank", (main) => main.getRange("A1").isBlank()],
    ["getLastRow", (main) => main.getLastRow()],
    ["getDataRange", (main) => main.getDataRange()],
  ];
  it.each(looks)("are heard of at %s", (_, look) => {
    const { main } = asked();
    main.getRange("B2").setValue(1).setFontWeight("bold");
    expect([main.getName(), main.getMaxRows(), main.getRange("B2").getRow()]).toEqual([
      "Main",
      1000,
      2,
    ]);
    expect(thrown(() => look(main)).message).toBe(PROTECTED);
    look(main);
  });

  it("take what is written after them along, when asked", () => {
    const { main, app } = asked("rest");
    main.getRange("A1").setValue("before");
    main.getRange("B2").setValue("refused");
    main.getRange("A3").setValue("after");
    expect(thrown(() => app.flush()).message).toBe(PROTECTED);
    main.getRange("A4").setValue("later");
    expect(main.getRange("A1:A4").getValues().flat()).toEqual(["before", "", "", "later"]);
  });

  it("throw at once, when asked", () => {
    const { main } = asked("never");
    expect(thrown(() => main.getRange("B2").setValue(1)).message).toBe(PROTECTED);
    expect(main.getRange("B2").getValue()).toBe("");
  });

  const WRITER = `function write() { SpreadsheetApp.getActive().getSheetByName("Main").getRange("B2").setValue(1); return "done"; }
function writeAndFail() { write(); throw new Error("mine"); }
function onEdit() { write(); }`;

  it("are heard of by whoever called, when the run ends", async () => {
    const { workbook } = opened({ code: WRITER });
    workbook.conditions.protect("Main", "B2");
    expect(thrown(() => workbook.call("write"))).toEqual({ name: "Exception", message: PROTECTED });
    expect(thrown(() => workbook.run("write")).message).toBe(PROTECTED);
    expect(thrown(() => workbook.run("writeAndFail")).message).toBe("mine");
    workbook.type("Main", "A1", "x");
    await workbook.settled();
    expect(workbook.editErrors.map((error) => (error as Error).message)).toEqual([PROTECTED]);
    expect(workbook.lock.isFree()).toBe(true);
  });
});

describe("protected cells", () => {
  it("take no value, look, rule or clearing, and can't be deleted; their owner may do it all", () => {
    const { main, app, workbook, book } = opened();
    workbook.conditions.protect("Main", "B2:B3");
    const acts: ((range: Sheet) => unknown)[] = [
      (range) => range.setValue(1),
      (range) => range.setFormula("=1"),
      (range) => range.setNumberFormat("0"),
      (range) => range.setBackground("#ffffff"),
      (range) => range.setNote("x"),
      (range) => range.insertCheckboxes(),
      (range) => range.setDataValidation(null),
      (range) => range.clear(),
      (range) => range.clearContent(),
    ];
    for (const act of acts) {
      act(main.getRange("A2:C2"));
      expect(thrown(() => app.flush()).message).toBe(PROTECTED);
    }
    expect(thrown(() => main.deleteRows(2, 1)).message).toBe(PROTECTED);
    expect(thrown(() => book.deleteSheet(main)).message).toBe(PROTECTED);
    expect(thrown(() => workbook.type("Main", "B2", "x")).message).toBe(PROTECTED);
    main.getRange("C2").setValue(1);
    owner(workbook).getRange("B2").setValue("owner");
    expect(main.getRange("B2:C2").getValues()).toEqual([["owner", 1]]);
  });

  it("move with their rows and columns", () => {
    const { main, app, workbook } = opened();
    workbook.conditions.protect("Main", "B2:B3");
    main.insertRowsAfter(1, 2);
    main.insertColumnsAfter(1, 1);
    main.getRange("B2").setValue("free");
    expect(main.getRange("B2").getValue()).toBe("free");
    for (const cell of ["C4", "C5"]) {
      main.getRange(cell).setValue("x");
      expect(thrown(() => app.flush()).message).toBe(PROTECTED);
    }
    main.deleteRows(1, 3);
    main.getRange("C3").setValue("free");
    main.getRange("C1").setValue("x");
    expect(thrown(() => app.flush()).message).toBe(PROTECTED);
  });

  it("reach to the end of a column, rows that are added later too", () => {
    const { main, app, workbook } = opened();
    workbook.conditions.protect("Main", "C:C");
    main.insertRowsAfter(1000, 5);
    main.getRange("C1004").setValue("x");
    expect(thrown(() => app.flush()).message).toBe(PROTECTED);
  });

  it("may be a whole tab, with its rows and its name", () => {
    const { main, app, workbook, book } = opened();
    workbook.conditions.protect("Main");
    for (const act of [
      () => main.setName("Mine"),
      () => main.insertRowsAfter(1, 1),
      () => main.deleteRows(1, 1),
      () => main.hideSheet(),
      () => book.deleteSheet(main),
    ]) {
      expect(thrown(act).message).toBe(PROTECTED);
    }
    for (const act of [
      () => main.getRange("Z9").setValue(1),
      () => main.appendRow(["x"]),
      () => main.clearContents(),
      () => main.setFrozenRows(1),
      () => main.setColumnWidth(1, 40),
    ]) {
      act();
      expect(thrown(() => app.flush()).message).toBe(PROTECTED);
    }
    expect([main.getName(), main.getLastRow(), main.getFrozenRows()]).toEqual(["Main", 0, 0]);
  });
});

describe("cells that reject input", () => {
  it("name the cell, and for a list what they take", () => {
    const { main, app, workbook } = opened();
    workbook.conditions.reject("Main", "A:A", "number");
    workbook.conditions.reject("Main", "B:B", "day");
    workbook.conditions.reject("Main", "C:C", ["Bench 1", "Bench 2"]);
    main.getRange("A1:C1").setValues([[7, new Date(2026, 2, 14), "Bench 2"]]);
    main.getRange("A2:C2").setValues([["", "=A1", ""]]);
    app.flush();
    main.getRange("A3").setValue("about 7");
    expect(thrown(() => app.flush()).message).toBe(INVALID("A3"));
    main.getRange("B3").setValue("mid March");
    expect(thrown(() => app.flush()).message).toBe(INVALID("B3"));
    main.getRange("C3").setValue("Bench 9");
    expect(thrown(() => app.flush()).message).toBe(
      `${INVALID("C3")} Please enter one of the following values: Bench 1, Bench 2.`,
    );
    expect(thrown(() => workbook.type("Main", "A3", "about 7")).message).toBe(INVALID("A3"));
    expect(main.getRange("A3:C3").getValues()).toEqual([["", "", ""]]);
  });
});

describe("merged cells", () => {
  it("swallow what is written to the covered ones, without a word", () => {
    const { main, app, workbook } = opened();
    workbook.conditions.merge("Main", "B2:C3");
    main.getRange("C3").setValue("lost");
    main.getRange("A2:C2").setValues([["a", "first", "lost"]]);
    app.flush();
    expect(main.getRange("A2:C3").getValues()).toEqual([
      ["a", "first", ""],
      ["", "", ""],
    ]);
    main.insertRowsAfter(1, 1);
    main.getRange("C4").setValue("lost");
    main.getRange("C3").setValue("lost");
    expect(main.getRange("B3:C4").getValues()).toEqual([
      ["first", ""],
      ["", ""],
    ]);
  });

  it("read as blank where a file has kept something below", () => {
    const { main, workbook } = opened({ rows: [[textCell("a"), numberCell(4)]] });
    workbook.conditions.merge("Main", "A1:B1");
    expect(main.getRange("A1:B1").getValues()).toEqual([["a", ""]]);
  });
});

describe("a structured table", () => {
  const FORMAT = "You can't set the number format of cells in a typed column.";
  const RULE = "This operation is not allowed on cells in typed columns.";
  const withTable = (joins = false) => {
    const all = opened({ rows: [[textCell("Batch"), textCell("Takes"), textCell("Done")]] });
    all.workbook.conditions.table("Main", "A1:C3", {
      types: { B: "number", C: ["yes", "no"] },
      joins,
    });
    return all;
  };

  it("refuses formats and rules in typed columns", () => {
    const { main, app } = withTable();
    const acts: [(range: Sheet) => unknown, string][] = [
      [(range) => range.setNumberFormat("0"), FORMAT],
      [(range) => range.setNumberFormats([["0"]]), FORMAT],
      [(range) => range.insertCheckboxes(), RULE],
      [(range) => range.setDataValidation(null), RULE],
    ];
    for (const [act, message] of acts) {
      act(main.getRange("B2"));
      expect(thrown(() => app.flush()).message).toBe(message);
      act(main.getRange("A2"));
      act(main.getRange("B9"));
      app.flush();
    }
  });

  it("refuses values of another type, below the header and not below the table", () => {
    const { main, app } = withTable();
    main.getRange("B1:B2").setValues([["Takes"], [7]]);
    main.getRange("B4:C4").setValues([["about 7", "maybe"]]);
    app.flush();
    main.getRange("A3:B3").setValues([["B3", "about 7"]]);
    expect(thrown(() => app.flush()).message).toBe(INVALID("B3"));
    main.getRange("C3").setValue("maybe");
    expect(thrown(() => app.flush()).message).toBe(INVALID("C3"));
    expect(main.getRange("A3:C3").getValues()).toEqual([["", "", ""]]);
  });

  it.each([true, false])("takes in a line right below, or not (%s)", (joins) => {
    const { main, workbook } = withTable(joins);
    main.getRange("A4").setValue("B4");
    main.getRange("A9").setValue("B9");
    expect(workbook.conditions.tables("Main")).toEqual([joins ? "A1:C4" : "A1:C3"]);
    main.insertRowsAfter(1, 2);
    expect(workbook.conditions.tables("Main")).toEqual([joins ? "A1:C6" : "A1:C5"]);
  });
});

describe("what else the spreadsheet refuses", () => {
  it("gives no lock to a script without a document", () => {
    const { run } = opened({ hasDocumentLock: false });
    // biome-ignore lint/suspicious/noExplicitAny: a script has no types either
    expect((run.globals as any).LockService.getDocumentLock()).toBeNull();
  });

  it("keeps one row and one column that are not frozen", () => {
    const { main, app } = opened();
    main.setFrozenRows(1);
    main.deleteRows(3, 998);
    expect(thrown(() => main.deleteRows(2, 1)).message).toBe(
      "Sorry, it is not possible to delete all non-frozen rows.",
    );
    main.setFrozenRows(2);
    expect(thrown(() => app.flush()).message).toBe(
      "You can't freeze all visible rows on the sheet.",
    );
    main.setFrozenColumns(26);
    expect(thrown(() => app.flush()).message).toBe(
      "You can't freeze all visible columns on the sheet.",
    );
    expect([main.getFrozenRows(), main.getFrozenColumns()]).toEqual([1, 0]);
  });

  it("knows no cells past the end of a tab, however they are named", () => {
    const { main, book } = opened();
    main.deleteRows(13, 988);
    const outside = "The coordinates of the range are outside the dimensions of the sheet.";
    for (const call of [
      () => main.getRange(1, 1, 13, 1),
      () => main.getRange("A13"),
      () => main.getRange("A1:A13"),
      () => main.getRange("AA1"),
      () => main.getRange("A12").offset(1, 0),
      () => main.getRange("A1").offset(0, 0, 13, 1),
      () => book.getRange("Main!A13"),
    ]) {
      expect(thrown(call).message).toBe(outside);
    }
    expect(thrown(() => main.insertRowsAfter(13, 1)).message).toMatch(/out of bounds/);
  });
});
