import { describe, expect, it } from "vitest";
import { callsAddIn, canCalculate } from "../../src/local/known-formulas";

const names = new Set(["BATCH_DUE"]);

describe("canCalculate", () => {
  it.each([
    "A1+1",
    "SUM(A:A,$B$2:C3)*1.5e3",
    "IF(Records!A2=\"MyName(\",TRUE,'My tab'!B2)",
    "'Bob''s [old] name'!A1".replace("[old] ", ""),
    'BATCH_DUE(Records!A:Z,,TODAY(),7)&"x"',
    "IFERROR(1/0,#N/A)",
    "{1,2;3,4}*-1%",
  ])("knows %s", (formula) => {
    expect(canCalculate(formula, names)).toBe(true);
  });

  it.each([
    "NOT_A_FUNCTION(1)",
    "SUM(MyRange)",
    "MyRange",
    "SUM(A2:A)",
    "[other.xlsx]Sheet1!A1",
    "'[other.xlsx]Sheet1'!A1",
    "SUM(Table1[Takes])",
    'IFERROR(__xludf.DUMMYFUNCTION("x"),5)',
    "BATCH_STAGES(A:Z)",
  ])("does not know %s", (formula) => {
    expect(canCalculate(formula, names)).toBe(false);
  });
});

describe("callsAddIn", () => {
  it("looks at calls outside text", () => {
    expect(callsAddIn("=SUM(batch_due (A:A))", names)).toBe(true);
    expect(callsAddIn('="BATCH_DUE("&A1', names)).toBe(false);
    expect(callsAddIn("=SUM(A1)", names)).toBe(false);
  });
});
