import { describe, expect, it } from "vitest";
import { filledFrom, fillers, type Snapshot } from "../../src/workbook/writing/spilled-cells";
import { dueRow, dueValue, enterDue } from "./due-list";
import { openNursery, smallRecords, takesOf } from "./nursery";
import { notWrittenText } from "./row-texts";

/** A column of ten cells with a formula in its second row. */
function column(formula: string, shown: unknown = 1, more: Record<number, string> = {}): Snapshot {
  const rows = Array.from({ length: 10 }, (_, at) => at + 1);
  const formulas = rows.map((row) => [row === 2 ? formula : (more[row] ?? "")]);
  return { formulas, values: rows.map((row) => [row === 2 ? shown : ""]) };
}

const fills = (snapshot: Snapshot, row: number) =>
  filledFrom(fillers(snapshot), snapshot, { row, column: 1 });

// The forms are those of the spreadsheet's own help on array formulas and of its function list; from memory.
describe("a formula fills the cells below it", () => {
  it.each([
    '=ARRAYFORMULA(IF(I2:I="";;I2:I+30))',
    '=ARRAYFORMULA(IF(LEN(A2:A); VLOOKUP(A2:A; Clones!A:C; 3; FALSE); ""))',
    "={R2:R}",
    "=FILTER(Other!B2:B;Other!A2:A<>0)",
    '=QUERY(Other!A1:D;"select B")',
    '=IMPORTRANGE("https://example.org";"Sheet1!B2:B")',
    "=MAP(I2:I;LAMBDA(day;day+30))",
    "=BYROW(A2:C20;LAMBDA(row;SUM(row)))",
    "=SEQUENCE(100)",
    "=ARRAYFORMULA(Sown+30)",
    '=IF(R2:R9="","",R2:R9)',
    "=I2:I9+30",
  ])("%s", (formula) => {
    expect(fills(column(formula), 5)).toBe("A2");
  });
});

describe("a formula of one cell fills no other", () => {
  it.each([
    "=I2+30",
    "=SUM(B2:B100)",
    '=IF(SUM(B2:B9)>0;"full";"")',
    "=VLOOKUP(B2;Clones!A:C;3;FALSE)",
    '=COUNTIF(B:B;"x")/COUNTA(B:B)',
    "=TAKE_RATE(M2;J2)",
    "=TODAY()",
    '=SUMPRODUCT((B2:B9="x")*(C2:C9))',
    "=INDEX(Clones!B:B;MATCH(A2;Clones!A:A;0))",
    '=TEXTJOIN(", ";TRUE;B2:B9)',
  ])("%s", (formula) => {
    expect(fills(column(formula), 5)).toBeNull();
  });

  it("nor one that could not fill them, that ends above, or that another stands in the way of", () => {
    const endless = "=ARRAYFORMULA(B2:B+1)";
    expect(fills(column(endless, "#REF!"), 5)).toBeNull();
    expect(fills(column("=ARRAYFORMULA(B2:B4+1)"), 4)).toBe("A2");
    expect(fills(column("=ARRAYFORMULA(B2:B4+1)"), 5)).toBeNull();
    expect(fills(column(endless, 1, { 3: "=ARRAYFORMULA(B3:B4)" }), 8)).toBeNull();
    expect(fills(column(endless), 1)).toBeNull();
  });
});

// People saw "written: Records!M3", and every calculated value of the column was gone: M2 showed #REF!
describe("a column that a formula fills", () => {
  const filled = () => {
    const nursery = openNursery([smallRecords()], { live: true }).ready();
    nursery.sheet("Records").getRange("M2").setFormula('=IF(R2:R4="";"";R2:R4)');
    return nursery;
  };

  it("is not written into, and the sentence names the formula's cell", async () => {
    const nursery = filled();
    await nursery.w.settled();
    const before = nursery.snapshot("Records");
    const { written, asked } = nursery.ask("sidebarRecord", takesOf("B2"));
    expect(written).toEqual([]);
    expect(asked.map(({ ask }) => ask)).toEqual([{ code: "filled", cell: "M3", filler: "M2" }]);
    await nursery.w.settled();
    expect(nursery.snapshot("Records")).toBe(before);
  });

  it("is named in the due list too", async () => {
    const nursery = filled();
    await nursery.w.settled();
    const row = dueRow(nursery, "B2");
    await enterDue(nursery, row, { Count: "60", Done: "TRUE" });
    expect(dueValue(nursery, "Written", row)).toBe(
      notWrittenText({ code: "filled", cell: "M3", filler: "M2" }),
    );
  });
});
