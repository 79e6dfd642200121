import { describe, expect, it } from "vitest";
import { formulaCell } from "../../src/local/workbook-data";
import * as check from "../../src/sentences/made/check";
import { callsIn } from "../../src/workbook/host/formula-calls";
import { openNursery, tab } from "./nursery";

const RECORDS = tab("Graft book", [
  ["Batch", "Variety", "Grafted on", "Grafts made", "Tally", "Living"],
  ["B1", "Alba", "2026-11-01", 100, "2026-11-21", 80],
]);
const TOLD = [{ header: "Living", readAs: "Takes" }];

function nursery(...formulas: readonly string[]) {
  const own = tab("Overview", [
    ["What I look at"],
    ...formulas.map((formula) => ["", formulaCell(formula)]),
  ]);
  return openNursery([RECORDS, own]);
}

function untold(formulas: readonly string[], columns = TOLD) {
  const opened = nursery(...formulas);
  opened.ask("sidebarSetUp", { tab: "Graft book", columns, methods: [] });
  const { rows } = opened.ask("sidebarCheck", null);
  return rows.filter(({ whatHappens }) => whatHappens === check.untoldHappens());
}

const BARE = "=TAKE_SUMMARY('Graft book'!A1:F9,\"Variety\")";

// The README's formulas gave other answers than the tabs of the same workbook, without a hint.
describe("formulas of the person's own, where Set up was told words", () => {
  it("are named where they leave the told columns out", () => {
    const [found, ...more] = untold([
      BARE,
      "=BATCH_BALANCE('Graft book'!A1:F9)",
      "=BATCH_BALANCE('Graft book'!A1:F9,'Nursery settings'!A10:C210)",
      "=BATCH_DUE('Graft book'!A1:F9,,'Nursery settings'!B4)",
    ]);
    expect(more).toEqual([]);
    expect(found).toMatchObject({
      rows: [],
      found: check.cells({ cells: ["Overview!B2", "Overview!B3", "Overview!B5"] }),
      trouble: check.untold({ formulas: 3 }),
      whatToDo: check.untoldToDo({ columns: "'Nursery settings'!$A$11:$C$211" }),
    });
  });

  it("are no trouble where nothing was told, or where they read another tab", () => {
    expect(untold([BARE], [])).toEqual([]);
    expect(untold(["=BATCH_BALANCE(Overview!A1:F9)", "=SUM('Graft book'!D2:D9)"])).toEqual([]);
  });

  it("are named up to five, then counted", () => {
    const [found] = untold(Array.from({ length: 8 }, () => BARE));
    expect(found?.found).toContain(check.moreCells({ more: 3 }));
  });

  it("are told once by Check, and those of our own tabs never", () => {
    const opened = nursery();
    opened.ask("sidebarSetUp", { tab: "Graft book", columns: TOLD, methods: [] });
    const { rows } = opened.ask("sidebarCheck", null);
    expect(rows.map(({ whatHappens }) => whatHappens)).not.toContain(check.untoldHappens());
  });
});

describe("callsIn", () => {
  it.each([
    ["=BATCH_DUE(A1:B2,,C1,14)", [["BATCH_DUE", "A1:B2", "", "C1", "14"]]],
    ['=ORDER_PLAN(150;D1;;"";0,8)', [["ORDER_PLAN", "150", "D1", "", '""', "0,8"]]],
    [
      "=IF(A1,TAKE_SUMMARY('a, (b'!A:B,\"x)\"),TAKE_RATE(1,2))",
      [
        ["TAKE_SUMMARY", "'a, (b'!A:B", '"x)"'],
        ["TAKE_RATE", "1", "2"],
      ],
    ],
    [
      '=BATCH_BALANCE(A1:F9,{"Takes","Living";"Sown","Put in"})',
      [["BATCH_BALANCE", "A1:F9", '{"Takes","Living";"Sown","Put in"}']],
    ],
    ["=SUM(A1:A3)", []],
    ['="BATCH_DUE(A1)"', []],
    ["=batch_balance(A:F", [["BATCH_BALANCE", "A:F"]]],
  ])("of %s are read", (formula, calls) => {
    expect(callsIn(formula).map((one) => [one.name, ...one.arguments])).toEqual(calls);
  });
});
