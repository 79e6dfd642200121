import { describe, expect, it } from "vitest";
import type { Cell } from "../../../src/core/cells/cell";
import { lastMonth } from "../../../src/core/takes/last-month";
import { type Period, periodNamed, periodText } from "../../../src/core/takes/periods";
import { trendAnswer } from "../../../src/core/takes/trend-answer";
import { rowsByName } from "../../support/answers";
import { day } from "../../support/days";
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
) => trendAnswer({ records: reading([HEADER, ...rows]), period, by });

const monthly = (taken: readonly number[], variety = "Easy") =>
  taken.map((some, month): Cell[] => {
    const on = `${2025 + Math.floor(month / 12)}-${String((month % 12) + 1).padStart(2, "0")}`;
    return [`${variety} ${month}`, variety, `${on}-03`, 100, `${on}-28`, some, "yes"];
  });

describe("trendAnswer", () => {
  const readings = (answer: ReturnType<typeof trend>) =>
    rowsByName(answer).map((row) => row.Reading);

  it("reads a month far below all others as low, against the usual rate and its limits", () => {
    const rows = rowsByName(trend(monthly([80, 82, 79, 81, 80, 82, 79, 81, 80, 82, 50, 80])));
    expect(rows.map(({ Reading }) => Reading)).toEqual([
      ...Array(10).fill("usual"),
      "low",
      "usual",
    ]);
    expect(rows[10]).toMatchObject({
      Period: "2025-11",
      Grafted: 100,
      Taken: 50,
      "Take rate": 0.5,
    });
    expect(rows[10]?.["Lower limit"]).toBeGreaterThan(0.5);
    expect(rows[10]?.["Usual rate"]).toBeCloseTo(936 / 1200, 12);
  });

  it("reads a slow fall as a drift before any month is low", () => {
    const fall = [...Array(10).fill(82), ...Array(10).fill(77)];
    const drift = readings(trend(monthly(fall)));
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
      rowsByName(trend(rows, period)).map(({ Period: name, Grafted, Taken }) => [
        name,
        Grafted,
        Taken,
      ]);
    expect(periods("week")).toEqual([
      ["2026-W14", 150, 105],
      ["2026-W23, still open", 50, 40],
    ]);
    expect(periods("month")).toEqual([
      ["2026-03", 100, 80],
      ["2026-04", 50, 25],
      ["2026-06, still open", 50, 40],
    ]);
    expect(periods("quarter")).toEqual([
      ["2026-Q1", 100, 80],
      ["2026-Q2, still open", 100, 65],
    ]);
  });

  it("marks periods whose takes are still to come, and leaves uncounted ones blank", () => {
    const rows = rowsByName(
      trend([
        ...monthly([80, 82, 79, 81]),
        ["late", "Easy", "2025-04-20", 100, "", "", ""],
        ["forgotten", "Easy", "2025-01-10", 100, "", "", ""],
        ["closed", "Easy", "2025-03-10", 100, "", "", "yes"],
        ["new", "Easy", "2025-05-02", 100, "", "", ""],
      ]),
    );
    expect(rows.map((row) => row.Period)).toEqual([
      ...["2025-01", "2025-02", "2025-03", "2025-04, still open", "2025-05, still open"],
    ]);
    expect(rows[4]).toMatchObject({ Grafted: null, Taken: null, "Take rate": null, Reading: null });
    expect(rows[4]?.["Usual rate"]).toBeCloseTo(0.805, 12);
  });

  it("follows each group on its own usual rate", () => {
    const rows = rowsByName(
      trend([...monthly([80, 80, 80]), ...monthly([50, 50, 50], "Hard")], "month", "Variety"),
    );
    expect(rows.map(({ Variety, Period: name }) => `${Variety} ${name}`.slice(0, 12))).toEqual([
      ...["Easy 2025-01", "Easy 2025-02", "Easy 2025-03"],
      ...["Hard 2025-01", "Hard 2025-02", "Hard 2025-03"],
    ]);
    expect(rows.map((row) => row["Usual rate"])).toEqual([0.8, 0.8, 0.8, 0.5, 0.5, 0.5]);
  });

  it("says which batches it can't place or use", () => {
    const { remark } = trend([
      ...monthly([80, 82]),
      ["undated", "Easy", "", 100, "", 70, ""],
      ["odd", "Easy", "2025-02-02", 10, "", 12, ""],
      ["open", "Easy", "2025-02-02", 10, "", "", ""],
    ]);
    expect(remark).toBe(
      "1 batch not counted yet. 1 batch left out: no day of grafting. 1 batch left out: more taken than grafted",
    );
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
    expect(() => periodNamed("moon")).toThrow(
      'period must be "week", "month" or "quarter"; found "moon"',
    );
  });

  it("are written as ISO weeks, months and quarters", () => {
    expect(periodText("week", day("2027-01-01"))).toBe("2026-W53");
    expect(periodText("month", day("2027-01-01"))).toBe("2027-01");
    expect(["2026-03-31", "2026-04-01"].map((text) => periodText("quarter", day(text)))).toEqual([
      ...["2026-Q1", "2026-Q2"],
    ]);
  });
});
