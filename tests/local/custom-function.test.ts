import { afterEach, describe, expect, it } from "vitest";
import { loadBundle } from "../../src/local/bundle";
import { booleanCell, formulaCell, numberCell, textCell } from "../../src/local/workbook-data";
import { calculated, fakeBundle } from "./fake-bundle";

type Sheet = Awaited<ReturnType<typeof calculated>>;
let open: Sheet[] = [];
async function sheet(...parameters: Parameters<typeof calculated>): Promise<Sheet> {
  const made = await calculated(...parameters);
  open.push(made);
  return made;
}
afterEach(() => {
  for (const one of open) one.close();
  open = [];
});

const DAY = "yyyy-mm-dd";
const data = [
  [numberCell(1), numberCell(46204, DAY), textCell("=1+1"), booleanCell(true), textCell("#N/A")],
  [numberCell(0.1, "0%"), undefined, textCell("0012"), booleanCell(false), numberCell(7, "@")],
];
const peek = async (formula: string, bundle = fakeBundle()) => {
  const { value } = await sheet([...data, [], [formulaCell(formula)]], bundle);
  return JSON.parse(String(value(3, 0)));
};

describe("arguments", () => {
  // What arrives: developers.google.com/apps-script/guides/sheets/functions.
  it("hands over a range as rows, blanks as '', days as Dates, errors and text as text", async () => {
    expect(await peek("=PEEK(A1:E2)")).toEqual([
      [
        [1, { day: "2026-07-01T00:00:00.000Z" }, "=1+1", true, "#N/A"],
        [0.1, "", "0012", false, "7"],
      ],
    ]);
  });

  it("hands over one cell, or a range of one cell, as its value", async () => {
    expect(await peek("=PEEK(A1,B2,B1:B1,D1)")).toEqual([
      1,
      "",
      { day: "2026-07-01T00:00:00.000Z" },
      true,
    ]);
  });

  it("hands over literals, arrays and what other formulas calculate", async () => {
    expect(await peek('=PEEK("a",1,TRUE,{1,2;3,4},DATE(2026,7,1),1/0,,A1:A2*2)')).toEqual([
      "a",
      1,
      true,
      [
        [1, 2],
        [3, 4],
      ],
      { day: "2026-07-01T00:00:00.000Z" },
      "#DIV/0!",
      "",
      [[2], [0.2]],
    ]);
    expect(await peek("=PEEK(Elsewhere!A1)")).toEqual(["#REF!"]);
  });

  it("hands over open-ended columns whole, down to the last row of the sheet", async () => {
    const { value } = await sheet([[formulaCell("=SIZE_OF(B:E)")]]);
    expect(value(0, 0)).toBe("1000 x 4");
  });

  it("leaves out what the formula leaves out", async () => {
    const { value } = await sheet([[formulaCell("=PEEK()"), formulaCell("=SIZE_OF()")]]);
    expect([value(0, 0), value(0, 1)]).toEqual(["[]", "undefined"]);
  });

  it("makes a day midnight in the spreadsheet's zone, not in the process's", async () => {
    // IANA time zone database: Auckland is UTC+12 in July, Honolulu UTC-10.
    expect(await peek("=PEEK(B1)", fakeBundle("Pacific/Auckland"))).toEqual([
      { day: "2026-06-30T12:00:00.000Z" },
    ]);
    expect(await peek("=PEEK(B1)", fakeBundle("Pacific/Honolulu"))).toEqual([
      { day: "2026-07-01T10:00:00.000Z" },
    ]);
  });
});

describe("results", () => {
  it.each(["UTC", "Pacific/Auckland", "America/New_York"])(
    "gives back the day that went in, with a date format, in a %s sheet",
    async (zone) => {
      const { cell } = await sheet(
        [
          [numberCell(46204, DAY)],
          [formulaCell("=SAME(A1)"), formulaCell("=ZONE_DAY(A1)")],
          [formulaCell('=AT_INSTANT("2026-07-01T10:30:00Z")')],
        ],
        fakeBundle(zone),
      );
      expect(cell(1, 0)).toMatchObject({ value: 46204, pattern: DAY });
      expect(cell(1, 1)?.value).toBe("2026-07-01");
      const wall = {
        UTC: 46204.4375,
        "Pacific/Auckland": 46204.9375,
        "America/New_York": 46204.2708,
      };
      expect(cell(2, 0)?.value).toBeCloseTo(wall[zone as keyof typeof wall], 4);
      expect(cell(2, 0)?.pattern).toBe("yyyy-mm-dd hh:mm:ss");
    },
  );

  it("spills a table with its days, and the spilled cells are days to the next function", async () => {
    const { cell, value } = await sheet([
      [numberCell(46204, DAY)],
      [formulaCell("=DAYS_FROM(A1,3)"), undefined, undefined, undefined, undefined],
      [],
      [],
      [formulaCell("=PEEK(A2:E3)")],
    ]);
    expect(cell(1, 0)).toMatchObject({
      value: 46204,
      pattern: DAY,
      spills: { startRow: 1, endRow: 3, startColumn: 0, endColumn: 4 },
    });
    expect(cell(3, 0)).toEqual({ value: 46206, pattern: DAY, spilled: true });
    expect([value(3, 1), value(3, 2), cell(3, 3) ?? null, value(3, 4)]).toEqual([
      2,
      false,
      null,
      "=row2",
    ]);
    expect(JSON.parse(String(value(4, 0)))).toEqual([
      [
        [{ day: "2026-07-01T00:00:00.000Z" }, 0, true, "", "=row0"],
        [{ day: "2026-07-02T00:00:00.000Z" }, 1, false, "", "=row1"],
      ],
    ]);
  });

  it("clears what a smaller table no longer fills, and recalculates what depends on a cell", async () => {
    const { value, enter } = await sheet([
      [numberCell(46204, DAY), numberCell(3)],
      [formulaCell("=DAYS_FROM(A1,B1)")],
    ]);
    expect(value(3, 1)).toBe(2);
    await enter(0, 1, { v: 2, t: 2 });
    expect(value(2, 1)).toBe(1);
    expect(value(3, 1)).toBeUndefined();
  });

  it("writes nothing but #REF! when a cell is in the way", async () => {
    const { value } = await sheet([
      [numberCell(46204, DAY), formulaCell("=PEEK(A2)")],
      [formulaCell("=DAYS_FROM(A1,3)")],
      [textCell("in the way")],
    ]);
    expect(value(1, 0)).toBe("#REF!");
    expect(value(1, 1)).toBeUndefined();
    expect(value(0, 1)).toBe('["#REF!"]');
  });
});

describe("errors", () => {
  it("shows #ERROR! and keeps the message; IFERROR and other functions see the error", async () => {
    const { cell, value } = await sheet([
      [
        formulaCell('=FAIL("no header")'),
        formulaCell('=IFERROR(FAIL("x"),"caught")'),
        formulaCell("=PEEK(A1)"),
        formulaCell("=FAIL_PLAIN()"),
      ],
    ]);
    expect(cell(0, 0)).toMatchObject({ value: "#ERROR!", message: "FAIL: no header" });
    expect(value(0, 1)).toBe("caught");
    expect(value(0, 2)).toBe('["#ERROR!"]');
    expect(cell(0, 3)?.message).toBe("a bare string");
  });

  it("keeps each cell's own message", async () => {
    const { cell } = await sheet([[formulaCell('=FAIL("one")'), formulaCell('=FAIL("two")')]]);
    expect([cell(0, 0)?.message, cell(0, 1)?.message]).toEqual(["FAIL: one", "FAIL: two"]);
  });

  it("goes on calculating after a function has thrown, and forgets the message", async () => {
    // Users saw every later formula stay empty: an exception inside the engine stops it for good.
    const { cell, value, enter } = await sheet([[formulaCell('=FAIL("x")')]]);
    await enter(1, 0, { f: "=1+1" });
    expect(value(1, 0)).toBe(2);
    await enter(0, 0, { f: "=SAME(5)" });
    expect(cell(0, 0)).toEqual({ value: 5, pattern: "", formula: "=SAME(5)" });
  });

  it.each([
    ["list", "is not a row of cells"],
    ["ragged", "unequal length"],
    ["empty", "empty array"],
    ["nan", "NaN"],
    ["object", "an object"],
    ["promise", "a Promise"],
    ["nothing of the kind", "undefined"],
  ])("refuses a %s as a result", async (what, words) => {
    const { cell } = await sheet([[formulaCell(`=GIVE("${what}")`)]]);
    expect(cell(0, 0)?.value).toBe("#ERROR!");
    expect(cell(0, 0)?.message).toContain("GIVE returned");
    expect(cell(0, 0)?.message).toContain(words);
  });

  it("refuses an add-in function with the name of a built-in one", async () => {
    const code = "/** @customfunction */ function SUM(a) { return a; }";
    const { settings } = fakeBundle();
    await expect(sheet([[]], loadBundle(code, settings))).rejects.toThrow("SUM is the name of a");
  });

  it("shows #NAME? for a function that is not there", async () => {
    const { value } = await sheet([[formulaCell("=INSIDE()"), formulaCell("=PRIVATE_(1)")]]);
    expect([value(0, 0), value(0, 1)]).toEqual(["#NAME?", "#NAME?"]);
  });
});

describe("TODAY", () => {
  // In the page TODAY() was Greenwich's day: yesterday, all morning in Apia. At any moment at least
  // one of these two zones has another day than Greenwich.
  it.each(["Pacific/Kiritimati", "Etc/GMT+12"])("is the day in %s", async (spreadsheetZone) => {
    const { value } = await sheet([[formulaCell("=TODAY()")]], fakeBundle(spreadsheetZone));
    const shown = new Intl.DateTimeFormat("en-CA", { timeZone: spreadsheetZone }).format(
      Date.now(),
    );
    expect(value(0, 0)).toBe(Date.parse(shown) / 86_400_000 + 25_569);
  });
});
