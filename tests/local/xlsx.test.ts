import { read, utils, type WorkSheet, write } from "@e965/xlsx";
import { describe, expect, it } from "vitest";
import { openWorkbook } from "../../src/local/engine";
import type { SheetCells } from "../../src/local/sheet-cells";
import {
  booleanCell,
  formulaCell,
  numberCell,
  type SheetDraft,
  textCell,
  workbookData,
} from "../../src/local/workbook-data";
import { readXlsx } from "../../src/local/xlsx-in";
import { writeXlsx } from "../../src/local/xlsx-out";
import * as text from "../../src/sentences/made/file-faults";
import { fakeBundle } from "./fake-bundle";

const bundle = fakeBundle();
const addInNames = new Set(bundle.functions.map(({ name }) => name));
const DAY = "yyyy-mm-dd";

async function calculate(drafts: readonly SheetDraft[]): Promise<SheetCells[]> {
  const workbook = openWorkbook(workbookData("t", drafts), bundle);
  await workbook.settled();
  const sheets = workbook.sheets();
  workbook.close();
  return sheets;
}
const through = async (drafts: readonly SheetDraft[]) =>
  readXlsx(writeXlsx(await calculate(drafts), addInNames), "t.xlsx", addInNames);

/** A file as another program could have written it. */
function file(sheet: WorkSheet, date1904 = false): Uint8Array {
  const book = utils.book_new(sheet, "Records");
  book.Workbook = { ...book.Workbook, WBProps: { date1904 } };
  return new Uint8Array(write(book, { type: "array", bookType: "xlsx", bookSST: true }));
}

describe("xlsx round trip", () => {
  it("carries values, days, formats and text that looks like something else", async () => {
    const rows = [
      [textCell("=1+1"), textCell("+44"), textCell("-"), textCell("@x"), textCell("0012")],
      [numberCell(46095, DAY), numberCell(46095.25, "d mmm yyyy hh:mm"), numberCell(0.5, "0.0%")],
      [],
      [undefined, booleanCell(true), booleanCell(false), numberCell(-2.25), textCell('é <&> "x"')],
    ];
    const [sheet] = await through([{ name: "Bob's list", rows }]);
    expect(sheet?.name).toBe("Bob's list");
    expect(sheet?.rows).toEqual(rows);
  });

  it("stores text as text in the file itself, not as what a formula gave", async () => {
    const [sheet] = await calculate([{ name: "A", rows: [[textCell("=1+1")]] }]);
    const bytes = writeXlsx(sheet ? [sheet] : [], addInNames);
    const book = read(bytes, { type: "array", bookFiles: true }) as unknown as {
      files: Record<string, { content: Uint8Array }>;
    };
    const xml = new TextDecoder().decode(book.files["xl/worksheets/sheet1.xml"]?.content);
    expect(xml).toContain('<c r="A1" t="s"><v>0</v></c>');
  });

  it("keeps tabs in order, hidden ones hidden, merged cells merged and widths", async () => {
    const merges = [{ startRow: 0, endRow: 0, startColumn: 0, endColumn: 1 }];
    const drafts = [
      { name: "B", rows: [[textCell("b")]], hidden: false, widths: [200], merges },
      { name: "A", rows: [[textCell("a")]], hidden: true },
    ];
    const back = await through(drafts);
    expect(back.map(({ name, hidden }) => [name, hidden])).toEqual([
      ["B", false],
      ["A", true],
    ]);
    expect(back[0]?.merges).toEqual(merges);
    expect(back[0]?.widths?.[0]).toBe(200);
  });

  it("keeps formulas that every program knows, with their value and the area they fill", async () => {
    const [sheet] = await through([
      {
        name: "A",
        rows: [
          [numberCell(2), numberCell(3)],
          [formulaCell("=A1*10")],
          [formulaCell("=TRANSPOSE(A1:B1)")],
        ],
      },
    ]);
    expect(sheet?.rows[1]?.[0]).toMatchObject({ f: "=A1*10", v: 20 });
    expect(sheet?.rows[2]?.[0]).toMatchObject({ f: "=TRANSPOSE(A1:B1)", v: 2 });
    // Not read back: the formula fills it again.
    expect(sheet?.rows[3]?.[0]).toBeUndefined();
    const [again] = await calculate(sheet ? [sheet] : []);
    expect(again?.rows[3]?.[0]).toMatchObject({ value: 3, spilled: true });
  });

  it("writes what the add-in calculated as values, days as days", async () => {
    const [sheet] = await through([
      {
        name: "A",
        rows: [
          [formulaCell("=DAYS_FROM(C1,2)"), undefined, numberCell(46204, DAY)],
          [],
          [formulaCell('=IFERROR(FAIL("x"),"caught")')],
        ].reverse(),
      },
    ]);
    expect(sheet?.rows[0]?.[0]).toEqual({ v: "caught", t: 1 });
    // C1 is blank now that the rows stand the other way round: the function fails and says so.
    expect(sheet?.rows[2]?.[0]).toMatchObject({ t: 1, v: expect.stringMatching(/^#ERROR! ./) });
  });

  it("writes spilled days with their format", async () => {
    const [sheet] = await through([
      {
        name: "A",
        rows: [[numberCell(46204, DAY)], [formulaCell("=DAYS_FROM(A1,2)")]],
      },
    ]);
    expect(sheet?.rows.slice(1)).toEqual([
      [numberCell(46204, DAY), numberCell(0), booleanCell(true), undefined, textCell("=row0")],
      [numberCell(46205, DAY), numberCell(1), booleanCell(false), undefined, textCell("=row1")],
    ]);
  });

  it("writes error values as errors", async () => {
    const [sheet] = await through([{ name: "A", rows: [[formulaCell("=1/0"), textCell("#N/A")]] }]);
    expect(sheet?.rows[0]).toEqual([{ v: "#DIV/0!", t: 1, f: "=1/0" }, textCell("#N/A")]);
  });

  it("cuts text that a file can't hold instead of failing", async () => {
    const [sheet] = await through([{ name: "A", rows: [[textCell("x".repeat(40_000))]] }]);
    expect(String(sheet?.rows[0]?.[0]?.v)).toHaveLength(32_767);
  });
});

describe("readXlsx", () => {
  it("keeps the value of a formula that the engine can't calculate", () => {
    const sheet: WorkSheet = {
      "!ref": "A1:C1",
      A1: { t: "n", v: 5, f: "NOT_A_FUNCTION(1)" },
      B1: { t: "n", v: 6, f: "MyNamedRange*2" },
      C1: { t: "n", v: 7, f: "SUM(A1:B1)" },
    };
    expect(readXlsx(file(sheet), "t.xlsx", addInNames)[0]?.rows[0]).toEqual([
      numberCell(5),
      numberCell(6),
      { ...numberCell(7), f: "=SUM(A1:B1)" },
    ]);
  });

  it("takes newer functions without the prefix of the file, and writes it again", async () => {
    const sheet: WorkSheet = { "!ref": "A1", A1: { t: "n", v: 3, f: "_xlfn.CONCAT(1,2)" } };
    const [draft] = readXlsx(file(sheet), "t.xlsx", addInNames);
    expect(draft?.rows[0]?.[0]).toMatchObject({ f: "=CONCAT(1,2)" });
    const [back] = await through(draft ? [draft] : []);
    expect(back?.rows[0]?.[0]).toMatchObject({
      f: "=CONCAT(1,2)",
      v: "12",
      custom: { fileFormula: "=_xlfn.CONCAT(1,2)" },
    });
  });

  it("shows a day in the reader's country format as ISO", () => {
    const sheet: WorkSheet = { "!ref": "A1", A1: { t: "n", v: 46095, z: "m/d/yy" } };
    expect(readXlsx(file(sheet), "t.xlsx", addInNames)[0]?.rows[0]).toEqual([
      numberCell(46095, DAY),
    ]);
  });

  it("adds the 1462 days of a workbook that counts from 1904", () => {
    // 1 January 1904 is serial 1462 of the usual count: 4 * 365 + 1 leap day (none in 1900) + 1.
    const sheet: WorkSheet = {
      "!ref": "A1:B1",
      A1: { t: "n", v: 46095 - 1462, z: DAY },
      B1: { t: "n", v: 100 },
    };
    expect(readXlsx(file(sheet, true), "t.xlsx", addInNames)[0]?.rows[0]).toEqual([
      numberCell(46095, DAY),
      numberCell(100),
    ]);
  });

  it("takes numbers that are no day of the calendar, and writes them again", async () => {
    const sheet: WorkSheet = {
      "!ref": "A1:B1",
      A1: { t: "n", v: 1e15, z: DAY },
      B1: { t: "n", v: -5, z: DAY },
    };
    const drafts = readXlsx(file(sheet), "t.xlsx", addInNames);
    expect(drafts[0]?.rows[0]).toEqual([numberCell(1e15, DAY), numberCell(-5, DAY)]);
    // The report crashed on the day that no calendar has.
    expect((await through(drafts))[0]?.rows[0]?.[0]).toEqual(numberCell(1e15, DAY));
  });

  it("refuses what is not an .xlsx workbook, in one sentence", () => {
    const no = (bytes: number[]) => () => readXlsx(new Uint8Array(bytes), "t.xlsx", addInNames);
    expect(no([0x41, 0x2c, 0x42])).toThrow(text.notAWorkbook({ file: "t.xlsx" }));
    expect(no([0xd0, 0xcf, 0x11, 0xe0])).toThrow(text.oldOrLocked({ file: "t.xlsx" }));
    expect(no([0x50, 0x4b, 3, 4, 0, 0])).toThrow(text.badWorkbook({ file: "t.xlsx" }));
    expect(() => readXlsx(file({ "!ref": "A1" }), "t.xlsx", addInNames)).toThrow(
      text.emptyTabs({ file: "t.xlsx" }),
    );
  });
});
