import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  cellsPart,
  columnsPart,
  formulaCall,
  isOurFormula,
  LEFT_OUT,
  sameAs,
  sameFormula,
  tabPart,
  textPart,
  wholePart,
} from "../../src/workbook/host/formula-text";
import { type Nursery, openNursery, SMALL_HEADER, smallRecords, tab } from "./nursery";

/** A formula without what stands in quotes, which is nobody's syntax. */
const outsideQuotes = (formula: string) => formula.replace(/"(?:[^"]|"")*"|'(?:[^']|'')*'/g, "");

/** Signs that not every locale reads alike: the comma, a decimal number, the braces of an array. */
const NOT_EVERYWHERE = /,|\d\.\d|[{}\\]/;

describe("the text of a formula", () => {
  it("parts arguments with ; and holds nothing that a locale reads otherwise", () => {
    const parts = [
      columnsPart("R, 0.5 {x}", 28),
      LEFT_OUT,
      tabPart("Nursery settings", "$B$4"),
      textPart('so "called", 0.95'),
      wholePart(14),
      cellsPart("$C$3"),
      LEFT_OUT,
    ];
    const formula = formulaCall("WORK_PLAN", parts);
    expect(formula).toBe(
      '=WORK_PLAN(\'R, 0.5 {x}\'!A:AB;;\'Nursery settings\'!$B$4;"so ""called"", 0.95";14;$C$3)',
    );
    expect(outsideQuotes(formula)).not.toMatch(NOT_EVERYWHERE);
    expect(sameAs("Ana's tab", "$B$2")).toBe("='Ana''s tab'!$B$2");
  });

  it.each([0.95, -1, 1.5, Number.NaN, 1e21])("refuses %s, for which there are cells", (number) => {
    expect(() => wholePart(number)).toThrow(/no whole number/);
  });

  it.each([
    ["=F(A1,\"a, b\",'x y'!B2)", "=F(A1;\"a, b\";'x y'!B2)", true],
    ["=F(A1, , B2)", "=F(A1;;B2)", true],
    ["=F('Records'!A:P)", "=F(Records!A:P)", true],
    ['=F("a,b")', '=F("a;b")', false],
    ['=F("a  b")', '=F("a b")', false],
    ["=F(A1;B2)", "=F(A1;B3)", false],
    ["=F('a b'!A1)", "=F('ab'!A1)", false],
  ])("%s and %s: alike %s", (one, other, alike) => {
    expect(sameFormula(one, other)).toBe(alike);
    expect(sameFormula(other, one)).toBe(alike);
  });
});

describe("every formula that is written", () => {
  const folder = new URL("../../src/workbook/", import.meta.url);
  const sources = readdirSync(folder).filter((name) => name.endsWith(".ts"));

  // Whatever is written past it would be an error in half of the world.
  it.each(sources.filter((name) => name !== "formula-text.ts"))(
    "in %s goes through the one place",
    (name) => {
      const code = readFileSync(new URL(name, folder), "utf8")
        .replace(/\/\*[\s\S]*?\*\//g, "")
        .replace(/^\s*\/\/.*$/gm, "");
      const texts = code.match(/"(?:[^"\\\n]|\\.)*"|'(?:[^'\\\n]|\\.)*'|`(?:[^`\\]|\\.)*`/g) ?? [];
      const formulas = texts.filter((text) => /^.=(?:[A-Z]|\$\{|')|[A-Z]_[A-Z]+\(/.test(text));
      expect(formulas).toEqual([]);
    },
  );

  const NASTY = "Rec, 0.5 {a};b's";
  function everything(): Nursery {
    const own = tab("Settings", [
      ["As-of day", { f: "=TODAY()" }],
      ["Level", 0.9],
    ]);
    const crew = tab("Crew", [
      ["Person", "Tasks", "Hours a day"],
      ["Tavi", "", 8],
    ]);
    const closed = tab("Closed days", [["Day"], ["2026-12-25"]]);
    const nursery = openNursery([{ ...smallRecords(), name: NASTY }, own, crew, closed]);
    nursery.ask("sidebarSetUp", {
      tab: NASTY,
      columns: [{ header: SMALL_HEADER[15], readAs: null }],
      methods: [],
    });
    nursery.ask("sidebarOrderTab", {
      ...{ order: "O-1", variety: "", wanted: 20, by: "2027-10-01", assurance: 0.8 },
      ...{ method: "", harvest: "" },
    });
    return nursery;
  }

  it("has no comma, decimal or brace outside quotes, as the workbook is handed it", () => {
    const nursery = everything();
    const handed: string[] = [];
    for (const name of nursery.tabs()) {
      for (const row of nursery.sheet(name).getDataRange().getFormulas()) {
        handed.push(...row.filter((text: string) => text !== ""));
      }
      // The first cell of a live tab quotes its formula as it was written.
      const [, quoted] = /: live, ([A-Z_]+\(.*\))$/.exec(String(nursery.value(name, "A1"))) ?? [];
      // A spreadsheet gives formulas back in the syntax of its locale.
      if (quoted !== undefined) expect(outsideQuotes(quoted)).not.toMatch(NOT_EVERYWHERE);
    }
    expect(handed.length).toBeGreaterThan(10);
    for (const text of handed) {
      expect(outsideQuotes(text)).not.toMatch(/\d\.\d|[{}\\]/);
    }
  });
});

describe("a plan whose formula stands in the workbook's own syntax", () => {
  it("is left alone, and written again where it is an error", () => {
    const nursery = openNursery([smallRecords()]).ready();
    nursery.ask("sidebarOrderTab", {
      ...{ order: "O-1", variety: "", wanted: 20, by: "2027-10-01", assurance: 0.8 },
      ...{ method: "", harvest: "" },
    });
    const { meter } = nursery.w;
    meter.reset();
    nursery.ask("sidebarSetUp", { tab: "Records", columns: [], methods: [] });
    expect(meter.calls.get("Range.setFormula") ?? 0).toBe(0);
    nursery.sheet("Plan O-1").getRange("A5").setFormula("=ORDER_PLAN(NA(),1,2)");
    nursery.ask("sidebarSetUp", { tab: "Records", columns: [], methods: [] });
    expect(meter.calls.get("Range.setFormula")).toBe(1);
  });
});

it.each([
  ["=BATCH_DUE('Records'!A:P;;TODAY())", true],
  ["=TWO_OR_MORE(A1)", true],
  ["=SUM(BATCH_DUE(A:P))", false],
  ["=TODAY()", false],
  ["BATCH_DUE(A:P)", false],
])("%s begins with a function of ours: %s", (formula, expected) => {
  expect(isOurFormula(formula)).toBe(expected);
});
