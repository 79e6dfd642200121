import { describe, expect, it } from "vitest";
import { withFormats } from "../../src/local/answer-tab";
import { type FormulaParts, resultTabs } from "../../src/local/result-tabs";
import type { SheetCell, SheetCells } from "../../src/local/sheet-cells";

const cell = (value: string | number, pattern = ""): SheetCell => ({ value, pattern }) as SheetCell;

/** A calculated tab: heading, formula, a blank line, header, then the rows. */
function tab(
  header: readonly string[],
  rows: readonly (readonly (SheetCell | null)[])[],
): SheetCells {
  return {
    rows: [[cell("Heading")], [cell("made by")], [], header.map((name) => cell(name)), ...rows],
  } as unknown as SheetCells;
}

const patterns = (sheet: SheetCells, column: number) =>
  sheet.rows.slice(4).map((row) => row[column]?.pattern);

describe("the formats of a calculated tab", () => {
  it("writes a column's hours all to the same decimals", () => {
    const rows = [
      [cell(2), cell(3)],
      [cell(0.4), cell(12)],
      [null, cell("none")],
    ];
    const shown = withFormats(tab(["Hours", "Plants"], rows), []);
    expect(patterns(shown, 0)).toEqual(["0.0", "0.0", undefined]);
    expect(patterns(shown, 1)).toEqual(["", "", ""]);
  });

  it("keeps at most two decimals, shares as per cent and days as days", () => {
    const rows = [[cell(18.409_312), cell(0.5), cell(46_000, "yyyy-mm-dd")]];
    const shown = withFormats(tab(["Batch spread", "Take rate", "From"], rows), ["Take rate"]);
    expect([0, 1, 2].map((column) => patterns(shown, column)[0])).toEqual([
      "0.00",
      "0.0%",
      "yyyy-mm-dd",
    ]);
  });
});

describe("the answers of a report", () => {
  const parts: FormulaParts = {
    ...{ records: "R!A:Z", filledRecords: "R!A1:Z9", timetable: "T!A:L", asOf: "S!B1" },
    ...{
      daysAhead: "7",
      level: "",
      columns: [["Takes", "Living", "header"]],
      places: "",
      prices: "",
    },
    ...{ orders: "", crew: "", closedDays: "", assurance: "", people: false },
  };
  const formulas = (more: Partial<FormulaParts>) =>
    resultTabs({ ...parts, ...more }).map(({ formula }) => formula);

  // The report set the grafters beside one another by name, and nobody had asked for it.
  it("rank nobody by name unless that is asked for", () => {
    const takes = (people: boolean) => formulas({ people }).filter((one) => /^TAKE/.test(one));
    expect(takes(false)).toEqual([
      'TAKE_SUMMARY(R!A:Z,"Variety",,{"Takes","Living","header"},T!A:L)',
    ]);
    expect(takes(true)[1]).toBe('TAKE_SUMMARY(R!A:Z,"Grafter",,{"Takes","Living","header"},T!A:L)');
  });

  it("plan work and look at orders where the file has persons and orders, and there alone", () => {
    const none = formulas({});
    expect(none.filter((one) => /ORDER|WORK/.test(one))).toEqual([]);
    const told = '{"Takes","Living","header"}';
    const added = formulas({ orders: "O!A:G", crew: "C!A:E", closedDays: "D!A:B" });
    expect(added.filter((one) => !none.includes(one))).toEqual([
      `WORK_PLAN(R!A:Z,T!A:L,C!A:E,S!B1,,D!A:B,${told})`,
      `ORDER_OUTLOOK(O!A:G,R!A:Z,T!A:L,S!B1,,${told})`,
    ]);
    expect(formulas({ orders: "O!A:G", assurance: "S!B4", columns: [] })).toContain(
      "ORDER_OUTLOOK(O!A:G,R!A:Z,T!A:L,S!B1,S!B4)",
    );
  });
});
