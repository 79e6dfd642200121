import { describe, expect, it } from "vitest";
import { engineFormula, shownFormula } from "../../../src/local/spreadsheet-app/formula-syntax";
import { numberCell, textCell } from "../../../src/local/workbook-data";
import { opened } from "./opened";

// The sources stand in formula-syntax.ts.
const COMMA = ["fr_FR", "de_DE", "es_ES", "pt_BR", "id_ID", "en_ZA"];
const POINT = ["en_GB", "en_US", "es_MX"];

describe("engineFormula", () => {
  it.each(COMMA)(
    "wants ; between arguments, a decimal comma and \\ between columns in %s",
    (of) => {
      expect(engineFormula("=F(A1;0,95)", of)).toBe("=F(A1,0.95)");
      expect(engineFormula("=F(A1;;,5)", of)).toBe("=F(A1,,.5)");
      expect(engineFormula("={1,5\\2;3\\4}", of)).toBe("={1.5,2;3,4}");
      expect(engineFormula("=F(A1; {1;2}; G(2; 1,5E3))", of)).toBe("=F(A1, {1;2}, G(2, 1.5E3))");
      for (const refused of [
        "=F(A1,B1)",
        "=F(A1;0.95)",
        "=F(A1,0,95)",
        "=F(14,A1)",
        '=F("x",5)',
        "={1.5;2}",
        "={A1,B1}",
        "=.5",
      ]) {
        expect([refused, engineFormula(refused, of)]).toEqual([refused, null]);
      }
    },
  );

  it.each(POINT)("takes , and ; between arguments and a decimal point in %s", (of) => {
    expect(engineFormula("=F(A1;0.95)", of)).toBe("=F(A1,0.95)");
    expect(engineFormula("=F(A1,0.95,.5)", of)).toBe("=F(A1,0.95,.5)");
    expect(engineFormula("={1.5,2;3,4}", of)).toBe("={1.5,2;3,4}");
    // "1,5" are two arguments here.
    expect(engineFormula("=F(1,5)", of)).toBe("=F(1,5)");
    for (const refused of ["={1\\2}", "=1,5", "=F(A1;"]) {
      expect([refused, engineFormula(refused, of)]).toEqual([refused, null]);
    }
  });

  it.each([...COMMA, ...POINT])(
    "leaves texts, tab names, errors and references alone in %s",
    (of) => {
      for (const formula of [
        '="a;b,c.d"&"say ""1,5;2"""',
        "='My; tab, 1.5'!A1:B2",
        "=SUM(Records!A:AB)",
        "=SUM($A$2:$B$9)/2",
        "=SUM(2:5)",
        "=STDEV.S(A1:A9)",
        "=#REF!+1",
        "=#N/A",
        "=-A1%",
        "='x''y;'!A1",
      ]) {
        expect(engineFormula(formula, of)).toBe(formula);
        expect(shownFormula(formula, of)).toBe(formula);
      }
    },
  );

  it("knows a number from the end of a reference", () => {
    expect(engineFormula("=F(A1,5)", "fr_FR")).toBeNull();
    expect(engineFormula("=F(1,5)", "fr_FR")).toBe("=F(1.5)");
    expect(engineFormula("=A1/0,5", "fr_FR")).toBe("=A1/0.5");
    expect(engineFormula("=A1/0.5", "fr_FR")).toBeNull();
  });
});

describe("formulas in a workbook with a decimal comma", () => {
  const SUM = [[numberCell(2), numberCell(3)]];

  it.each(["setValue", "setFormula"])(
    "%s refuses another locale's, as an error in the cell",
    async (method) => {
      const { main, workbook } = opened({ locale: "fr_FR", rows: SUM });
      main.getRange("C1")[method]("=SUM(A1,B1)");
      main.getRange("D1")[method]("=SUM(A1;B1)*0,5");
      await workbook.settled();
      expect(main.getRange("C1:D1").getValues()).toEqual([["#ERROR!", 2.5]]);
      expect(main.getRange("C1:D1").getFormulas()).toEqual([["=SUM(A1,B1)", "=SUM(A1;B1)*0,5"]]);
      const [cells] = workbook.sheets()[0]?.rows ?? [];
      expect(cells?.[2]).toMatchObject({
        value: "#ERROR!",
        unread: "=SUM(A1,B1)",
        message: "Formula parse error.",
      });
      expect(cells?.[2]).not.toHaveProperty("formula");
    },
  );

  it("setValues and typing go the same way", async () => {
    const { main, workbook } = opened({ locale: "de_DE", rows: SUM });
    main.getRange("C1:D1").setValues([["=SUM(A1,B1)", "=SUM(A1;B1)"]]);
    workbook.type("Main", "E1", "=SUM(A1,B1)");
    workbook.type("Main", "F1", "=SUM(A1;B1)");
    await workbook.settled();
    expect(main.getRange("C1:F1").getValues()).toEqual([["#ERROR!", 5, "#ERROR!", 5]]);
  });

  it("keeps formulas alive when the workbook gets another locale, and those that were none dead", async () => {
    const { main, workbook } = opened({ rows: SUM });
    main.getRange("C1").setFormula("=SUM(A1,B1)*0.5");
    main.getRange("D1").setFormula("={1\\2}");
    await workbook.settled();
    workbook.conditions.locale("pt_BR");
    expect(main.getRange("C1").getFormula()).toBe("=SUM(A1;B1)*0,5");
    main.getRange("A1").setValue(4);
    await workbook.settled();
    expect(main.getRange("C1:D1").getValues()).toEqual([[3.5, "#ERROR!"]]);
    expect(main.getRange("D1").getFormula()).toBe("={1\\2}");
    // What is written from now on is read by the new locale.
    main.getRange("E1").setFormula("=SUM(A1,B1)");
    await workbook.settled();
    expect(main.getRange("E1").getValue()).toBe("#ERROR!");
  });

  it("makes a formula of = in a text cell, and text of an apostrophe", async () => {
    const { main, workbook } = opened();
    main
      .getRange("A1:A2")
      .setNumberFormat("@")
      .setValues([["=1+1"], ["'=1+1"]]);
    await workbook.settled();
    expect(main.getRange("A1:A2").getFormulas()).toEqual([["=1+1"], [""]]);
    expect(main.getRange("A2").getValue()).toBe("=1+1");
  });
});

describe("what a custom function may read", () => {
  const CODE = `/** @customfunction */
function TWICE(x) { return Array.isArray(x) ? x.length : x * 2; }`;
  const REFUSAL =
    "This function is not allowed to reference a cell with NOW(), RAND(), RANDARRAY(), or RANDBETWEEN()";

  it.each(["=NOW()", "=RAND()", "=RANDBETWEEN(1,9)", "=2*ROUND(NOW())"])(
    "is never %s, not even through cells between",
    async (volatile) => {
      const { main, workbook } = opened({ code: CODE, rows: [[textCell("x"), numberCell(4)]] });
      main
        .getRange("A2:A7")
        .setFormulas([
          [volatile],
          ["=A2+1"],
          ["=TWICE(A3)"],
          ["=TWICE(A1:A3)"],
          ["=TWICE(B1)"],
          ["=TWICE(NOW())"],
        ]);
      await workbook.settled();
      expect(main.getRange("A4:A7").getValues()).toEqual([
        ["#ERROR!"],
        ["#ERROR!"],
        [8],
        ["#ERROR!"],
      ]);
      expect(workbook.sheets()[0]?.rows[3]?.[0]?.message).toBe(REFUSAL);
      main.getRange("A2").setValue(1);
      await workbook.settled();
      expect(main.getRange("A4:A5").getValues()).toEqual([[4], [3]]);
    },
  );

  it.each([true, false])("TODAY() is refused or not, as asked (%s)", async (refusesToday) => {
    const { main, workbook } = opened({ code: CODE, refusesToday });
    main.getRange("A1:A3").setFormulas([["=TODAY()"], ["=TWICE(A1)"], ["=A1+0"]]);
    await workbook.settled();
    expect(main.getRange("A2").getValue() === "#ERROR!").toBe(refusesToday);
    expect(main.getRange("A3").getValue()).toBeTypeOf("number");
    main.getRange("B1").setValue("'=TODAY()");
    main.getRange("B2").setFormula("=TWICE(B1:B3)");
    await workbook.settled();
    expect(main.getRange("B2").getValue()).toBe(3);
  });
});
