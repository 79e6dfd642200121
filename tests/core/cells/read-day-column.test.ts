import { describe, expect, it } from "vitest";
import type { Cell } from "../../../src/core/cells/cell";
import {
  type DayOrder,
  type DayReading,
  dayColumnReader,
  type OrderShown,
} from "../../../src/core/cells/read-day-column";
import { day, iso } from "../../support/days";

const asOf = day("2026-11-25");

function readings(
  cells: readonly Cell[],
  usual: DayOrder | null = null,
  latest: typeof asOf | null = asOf,
): DayReading[] {
  const { read } = dayColumnReader(() => cells, { usualOrder: () => usual, asOf: latest });
  return cells.map(read);
}

const daysOf = (list: readonly DayReading[]) =>
  list.map((one) => (one.kind === "day" ? iso(one.day) : one.kind));

describe("the order of day and month in a column", () => {
  it("is day first where one first number is above 12, whatever the locale", () => {
    const cells = ["3/9/26", "25/9/26", "04/10/2026"];
    for (const locale of [null, "day-first", "month-first"] as const) {
      expect(daysOf(readings(cells, locale))).toEqual(["2026-09-03", "2026-09-25", "2026-10-04"]);
    }
  });

  it("is month first where one second number is above 12, whatever the locale", () => {
    const cells = ["3/9/26", "9/25/26"];
    for (const locale of [null, "day-first", "month-first"] as const) {
      expect(daysOf(readings(cells, locale))).toEqual(["2026-03-09", "2026-09-25"]);
    }
  });

  it("is told by evidence that stands below", () => {
    const cells = [...Array<string>(300).fill("3/9/26"), "13/9/26"];
    expect(new Set(daysOf(readings(cells, "month-first")).slice(0, 300))).toEqual(
      new Set(["2026-09-03"]),
    );
  });

  it("is the locale's where the column gives nothing away", () => {
    expect(daysOf(readings(["3/9/26"], "day-first"))).toEqual(["2026-09-03"]);
    expect(daysOf(readings(["3/9/26"], "month-first"))).toEqual(["2026-03-09"]);
  });

  it("stays open without evidence and without a locale, and the reading names both days", () => {
    expect(readings(["3/9/26"])).toEqual([
      { kind: "unread", why: { code: "either-day", days: [day("2026-09-03"), day("2026-03-09")] } },
    ]);
  });

  it("stays open where the column's own dates speak both ways; those that are sure are read", () => {
    const cells = ["25/9/26", "9/25/26", "3/9/26", "7/7/26", "2026-09-03"];
    for (const locale of [null, "day-first", "month-first"] as const) {
      expect(daysOf(readings(cells, locale))).toEqual([
        "2026-09-25",
        "2026-09-25",
        "unread",
        "2026-07-07",
        "2026-09-03",
      ]);
    }
  });

  it("is beaten by a date that is sure, in either order", () => {
    expect(readings(["9/25/26"], "day-first")).toEqual([
      { kind: "day", day: day("2026-09-25"), isPlain: true },
    ]);
    expect(readings(["25/9/26"], "month-first")).toEqual([
      { kind: "day", day: day("2026-09-25"), isPlain: true },
    ]);
  });

  it("is told by dates without a year as well", () => {
    expect(daysOf(readings(["3/9/26", "25/9"]))).toEqual(["2026-09-03", "undated"]);
    expect(daysOf(readings(["3/9/26", "9/25"]))).toEqual(["2026-03-09", "undated"]);
  });

  it("is asked of others only where the column gives nothing away", () => {
    let asked = 0;
    const usualOrder = () => {
      asked += 1;
      return "month-first" as const;
    };
    const cells = ["3/9/26", "25/9/26", "9/9/26", "2026-09-03", "", 46268];
    const told = dayColumnReader(() => cells, { usualOrder, asOf });
    for (const cell of cells) told.read(cell);
    expect(asked).toBe(0);
    const open = dayColumnReader(() => ["3/9/26"], { usualOrder, asOf });
    expect(open.read("3/9/26")).toMatchObject({ day: day("2026-03-09") });
    expect(asked).toBe(1);
  });

  it.each<[string[], OrderShown]>([
    [["3/9/26", "25/9/26"], "day-first"],
    [["3/9/26", "9/25/26"], "month-first"],
    [["25/9/26", "9/25/26"], "mixed"],
    [["3/9/26", "9/9/26", "25 Sep 2026", "2026-09-25", "soon", ""], "none"],
    [[], "none"],
    // No day either way round: it tells nothing.
    [["30/2/26", "32/1/26"], "none"],
  ])("shown by %j is said to other columns: %s", (cells, shown) => {
    const { orderShown } = dayColumnReader(() => cells, { usualOrder: () => null, asOf });
    expect(orderShown()).toBe(shown);
  });

  it("is not told by dates with a month's name, or serials, or date cells", () => {
    const cells: Cell[] = ["25 Sep 2026", 46351, { day: day("2026-09-25") }, "3/9/26"];
    expect(daysOf(readings(cells))[3]).toBe("unread");
  });
});

describe("cells of a day column", () => {
  it("may hold a day, a serial near the as-of day, or nothing", () => {
    const cells: Cell[] = [{ day: day("2026-09-03") }, 46268, 46268.75, "", "  "];
    expect(daysOf(readings(cells))).toEqual([
      "2026-09-03",
      "2026-09-03",
      "2026-09-03",
      "blank",
      "blank",
    ]);
  });

  it("hold a serial only within 20 years of the as-of day", () => {
    // 46351 is 2026-11-25 (tests/fixtures/serials).
    const twentyYears = 20 * 365;
    expect(daysOf(readings([46351 + twentyYears, 46351 - twentyYears]))).toEqual([
      "2046-11-20",
      "2006-11-30",
    ]);
    for (const number of [0, 1, 120, 2026, 20260903, 46351 + 7400, 46351 - 7400, -46351]) {
      expect(readings([number])).toEqual([{ kind: "unread", why: { code: "number-for-day" } }]);
    }
  });

  it("hold a serial of our time where the question has no day", () => {
    expect(daysOf(readings([46351], null, null))).toEqual(["2026-11-25"]);
    expect(daysOf(readings([120, 2026, 99999], null, null))).toEqual([
      "unread",
      "unread",
      "unread",
    ]);
  });

  it.each([
    [true, { code: "tick-box-for-day" }],
    ["#REF!", { code: "cell-shows", shown: "#REF!" }],
    ["#N/A (not found)", { code: "cell-shows", shown: "#N/A" }],
    ["next week", { code: "not-a-day" }],
    ["31/11/26", { code: "no-such-day" }],
  ])("leave %s unread and say why", (cell, why) => {
    expect(readings([cell])).toEqual([{ kind: "unread", why }]);
  });

  it("hold a day without a year where none is written, in the column's order", () => {
    const [, named, month, numbers] = readings(["25/9/26", "3 Sep", "Aug 25", "3/9"]);
    expect(named).toMatchObject({ kind: "undated", orElse: null });
    expect(month).toMatchObject({ kind: "undated", orElse: day("2025-08-16") });
    const inYear = numbers?.kind === "undated" ? numbers.inYear(2021) : null;
    expect(iso(inYear)).toBe("2021-09-03");
  });

  it("leave two numbers unread where neither a year nor an order is known", () => {
    expect(readings(["3/9"])).toEqual([{ kind: "unread", why: { code: "day-or-month-first" } }]);
    expect(daysOf(readings(["25/9"]))).toEqual(["undated"]);
  });

  it("don't change", () => {
    const cells: Cell[] = Object.freeze(["3/9/26", "25/9/26", 46268]) as Cell[];
    readings(cells);
    expect(cells).toEqual(["3/9/26", "25/9/26", 46268]);
  });
});
