import { ICommandService } from "@univerjs/core";
import { SetRangeValuesCommand } from "@univerjs/sheets";
import { describe, expect, it } from "vitest";
import { numberCell } from "../../../src/local/workbook-data";
import { opened } from "./opened";

const CODE = `
function onEdit(e) {
  var sheet = e.range.getSheet();
  if (sheet.getName() !== 'Main') throw new Error('wrong tab');
  var at = e.source.getSheetByName('Other');
  at.appendRow([e.range.getA1Notation(), "'" + e.value, "'" + e.oldValue,
    'value' in e, [e.range.rowStart, e.range.rowEnd, e.range.columnStart, e.range.columnEnd].join('-')]);
}
function writes() { SpreadsheetApp.getActive().getSheetByName('Main').getRange('A1').setValue(9); }
`;

const heard = (book: ReturnType<typeof opened>["book"]) => {
  const sheet = book.getSheetByName("Other");
  return sheet.getLastRow() === 0 ? [] : sheet.getDataRange().getValues();
};

describe("onEdit", () => {
  it("hears what a person types, with raw texts of new and old value", async () => {
    const { workbook, book } = opened({ code: CODE, zone: "UTC" });
    workbook.type("Main", "B2", "5");
    await workbook.settled();
    workbook.type("Main", "B2", "true");
    await workbook.settled();
    workbook.type("Main", "B2", "2026-03-14");
    await workbook.settled();
    workbook.type("Main", "B2", "");
    await workbook.settled();
    expect(heard(book)).toEqual([
      ["B2", "5", "undefined", true, "2-2-2-2"],
      ["B2", "TRUE", "5", true, "2-2-2-2"],
      ["B2", "46095", "TRUE", true, "2-2-2-2"],
      ["B2", "undefined", "46095", false, "2-2-2-2"],
    ]);
  });

  // Source: the guide on event objects: value and oldValue only when a single cell was edited.
  it("hears one event without values for a paste", async () => {
    const { workbook, book, main } = opened({ code: CODE });
    workbook.paste("Main", "B2", [
      ["1", "2"],
      ["x", "=1+1"],
    ]);
    await workbook.settled();
    expect(heard(book)).toEqual([["B2:C3", "undefined", "undefined", false, "2-3-2-3"]]);
    expect(main.getRange("B2:C3").getValues()).toEqual([
      [1, 2],
      ["x", 2],
    ]);
  });

  it("does not hear scripts, formulas or mere looks", async () => {
    const { workbook, book, main } = opened({ code: CODE, rows: [[numberCell(1)]] });
    main.getRange("B1").setFormula("=A1*2");
    workbook.call("writes");
    main.getRange("A1").setNumberFormat("0.0").insertCheckboxes();
    main.insertRowsAfter(1, 1);
    workbook.book.injector.get(ICommandService).syncExecuteCommand("sheet.command.set-style", {
      unitId: workbook.book.unitId,
      subUnitId: "sheet-1",
      range: { startRow: 0, endRow: 0, startColumn: 0, endColumn: 0 },
      style: { type: "bl", value: 1 },
    });
    await workbook.settled();
    expect(heard(book)).toEqual([]);
  });

  it("loses edits that come faster than it works, and all of them when told so", async () => {
    const { workbook, book } = opened({ code: CODE });
    for (const cell of ["A1", "A2", "A3", "A4"]) workbook.type("Main", cell, "1");
    await workbook.settled();
    expect(heard(book).map(([cell]: [string]) => cell)).toEqual(["A1", "A2"]);
    expect(workbook.edits.dropped).toBe(2);
    workbook.edits.dropsAll = true;
    workbook.type("Main", "A5", "1");
    await workbook.settled();
    expect(heard(book)).toHaveLength(2);
    expect(workbook.edits.dropped).toBe(3);
  });

  it("keeps an error of the function to itself and goes on", async () => {
    const { workbook, book } = opened({ code: CODE });
    workbook.type("Other", "J9", "1");
    await workbook.settled();
    workbook.type("Main", "A1", "1");
    await workbook.settled();
    expect(workbook.editErrors.map(String)).toEqual(["Error: wrong tab"]);
    expect(book.getSheetByName("Other").getLastRow()).toBe(10);
  });

  it("hears the engine's own command that the page's grid uses", async () => {
    const { workbook, book } = opened({ code: CODE });
    workbook.book.injector.get(ICommandService).syncExecuteCommand(SetRangeValuesCommand.id, {
      unitId: workbook.book.unitId,
      subUnitId: "sheet-1",
      range: { startRow: 3, endRow: 3, startColumn: 2, endColumn: 2 },
      value: { v: 1, t: 3 },
    });
    await workbook.settled();
    expect(heard(book)).toEqual([["C4", "TRUE", "undefined", true, "4-4-3-3"]]);
  });
});
