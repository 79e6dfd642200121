import { describe, expect, it } from "vitest";
import type { Cell } from "../../../src/core/cells/cell";
import { lastMonth } from "../../../src/core/takes/last-month";
import { type Period, periodNamed, periodText } from "../../../src/core/takes/periods";
import { takeTrend } from "../../../src/core/takes/take-trend";
import { day } from "../../support/days";
import { faultOf } from "../../support/fault-of";
import { reading } from "../records/reading";

const HEADER = [
  "Batch",
  "Variety",
  "Grafted on",
  "Grafts made",
  "Take count day",
  "Takes",
  "Closed",
];
const trend = (
  rows: readonly (readonly Cell[])[],
  period: Period = "month",
  by: string | null = null,
) => takeTrend({ records: reading([HEADER, ...rows]), period, by });

const monthly = (taken: readonly number[], variety = "Easy") =>
  taken.map((some, month): Cell[] => {
    const on = `${2025 + Math.floor(month / 12)}-${String((month % 12) + 1).padStart(2, "0")}`;
    return [`${variety} ${month}`, variety, `${on}-03`, 100, `${on}-28`, some, "yes"];
  });

describe("takeTrend", () => {
  it("reads a month far below all others as low, against the usual rate and its limits", () => {
    const rows = trend(monthly([80, 82, 79, 81, 80, 82, 79, 81, 80, 82, 50, 80])).periods;
    expect(rows.map((one) => one.reading)).toEqual([...Array(10).fill("usual"), "low", "usual"]);
    expect(rows[10]).toMatchObject({
      period: "2025-11",
      grafted: 100,
      taken: 50,
      takeRate: 0.5,
    });
    expect(rows[10]?.low).toBeGreaterThan(0.5);
    expect(rows[10]?.usualRate).toBeCloseTo(936 / 1200, 12);
  });

  it("reads a slow fall as a drift before any month is low", () => {
    const fall = [...Array(10).fill(82), ...Array(10).fill(77)];
    const drift = trend(monthly(fall)).periods.map((one) => one.reading);
    expect(drift.slice(0, 7)).toEqual(Array(7).fill("usual"));
    expect(drift[7]).toBe("drifting up");
    expect(drift.at(-1)).toBe("drifting down");
    expect(drift).not.toContain("low");
  });

  it("pools the batches of a period, by week, month and quarter", () => {
    const rows = [
      ["B1", "Easy", "2026-03-30", 100, "2026-04-29", 80, "yes"],
      ["B2", "Easy", "2026-04-01", 50, "2026-04-30", 25, "yes"],
      ["B3", "Easy", "2026-06-01", 50, "2026-07-01", 40, "yes"],
    ];
    const periods = (period: Period) =>
      trend(rows, period).periods.map((one) => [one.period, one.isOpen, one.grafted, one.taken]);
    expect(periods("week")).toEqual([
      ["2026-W14", false, 150, 105],
      ["2026-W23", true, 50, 40],
    ]);
    expect(periods("month")).toEqual([
      ["2026-03", false, 100, 80],
      ["2026-04", false, 50, 25],
      ["2026-06", true, 50, 40],
    ]);
    expect(periods("quarter")).toEqual([
      ["2026-Q1", false, 100, 80],
      ["2026-Q2", true, 100, 65],
    ]);
  });

  it("marks periods whose takes are still to come, and leaves uncounted ones blank", () => {
    const { periods } = trend([
      ...monthly([80, 82, 79, 81]),
      ["late", "Easy", "2025-04-20", 100, "", "", ""],
      ["forgotten", "Easy", "2025-01-10", 100, "", "", ""],
      ["closed", "Easy", "2025-03-10", 100, "", "", "yes"],
      ["new", "Easy", "2025-05-02", 100, "", "", ""],
    ]);
    expect(periods.map(({ period, isOpen }) => [period, isOpen])).toEqual([
      ["2025-01", false],
      ["2025-02", false],
      ["2025-03", false],
      ["2025-04", true],
      ["2025-05", true],
    ]);
    expect(periods[4]).toMatchObject({ grafted: null, taken: null, takeRate: null, reading: null });
    expect(periods[4]?.usualRate).toBeCloseTo(0.805, 12);
  });

  it("follows each group on its own usual rate", () => {
    const all = [...monthly([80, 80, 80]), ...monthly([50, 50, 50], "Hard")];
    const { periods } = trend(all, "month", "Variety");
    expect(periods.map(({ group, period }) => `${group[0]} ${period}`)).toEqual([
      ...["Easy 2025-01", "Easy 2025-02", "Easy 2025-03"],
      ...["Hard 2025-01", "Hard 2025-02", "Hard 2025-03"],
    ]);
    expect(periods.map(({ usualRate }) => usualRate)).toEqual([0.8, 0.8, 0.8, 0.5, 0.5, 0.5]);
  });

  it("says which batches it can't place or use", () => {
    const { remarks } = trend([
      ...monthly([80, 82]),
      ["undated", "Easy", "", 100, "", 70, ""],
      ["odd", "Easy", "2025-02-02", 10, "", 12, ""],
      ["open", "Easy", "2025-02-02", 10, "", "", ""],
    ]);
    expect(remarks).toEqual([
      { code: "not-counted-yet", batches: 1 },
      { code: "more-taken-than-grafted", batches: 1 },
      { code: "no-grafting-day", batches: 1 },
    ]);
  });
});

describe("lastMonth", () => {
  const last = (rows: readonly (readonly Cell[])[]) => lastMonth(reading([HEADER, ...rows]));

  it("is the last month with takes counted, open or not", () => {
    const open = ["new", "Easy", "2025-03-02", 100, "", "", ""];
    expect(last([...monthly([80, 82]), open])).toMatchObject({
      ...{ period: "2025-02", isOpen: false, grafted: 100, takeRate: 0.82, reading: "usual" },
    });
    expect(last(monthly([80, 82]))).toMatchObject({ period: "2025-02", isOpen: true });
  });

  it("is null where nothing is counted, and where the table has no takes", () => {
    expect(last([["B1", "Easy", "2025-03-02", 100, "", "", ""]])).toBeNull();
    expect(
      lastMonth(
        reading([
          ["Batch", "Sown"],
          ["B1", "2025-01-01"],
        ]),
      ),
    ).toBeNull();
  });
});

describe("periods", () => {
  it("are named whatever the capitals, and refused by name", () => {
    expect(periodNamed(" Month ")).toBe("month");
    expect(faultOf(() => periodNamed("moon"))).toEqual({ code: "no-such-period", found: "moon" });
  });

  it("are written as ISO weeks, months and quarters", () => {
    expect(periodText("week", day("2027-01-01"))).toBe("2026-W53");
    expect(periodText("month", day("2027-01-01"))).toBe("2027-01");
    expect(["2026-03-31", "2026-04-01"].map((text) => periodText("quarter", day(text)))).toEqual([
      ...["2026-Q1", "2026-Q2"],
    ]);
  });
});
