import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readDayText, type UndatedDay } from "../../../src/core/cells/read-day-text";
import { settleYear, type YearHints } from "../../../src/core/cells/settle-year";
import { day, iso } from "../../support/days";
import { textCases } from "../../support/sheet-values";

const NOTHING: YearHints = { neighbours: [], sectionYear: null, asOf: null };

function undated(text: string): UndatedDay {
  const reading = readDayText(text);
  if (reading.kind !== "undated") throw new Error(`"${text}" is read as ${reading.kind}`);
  return reading;
}

/** A text settled, as an ISO text. */
function settled(text: string, hints: Partial<YearHints>): string | null {
  return iso(settleYear(undated(text), { ...NOTHING, ...hints }));
}

describe("a day without a year, beside other days of its row,", () => {
  it.each([
    ["3 Sep", ["2024-06-02"], "2024-09-03"],
    ["10 Jan", ["2024-12-20"], "2025-01-10"],
    ["20 Dec", ["2025-01-10"], "2024-12-20"],
    ["3 Sep", ["2020-06-02", "2024-06-03"], "2024-09-03"],
    // The nearest of all neighbours counts: 20 Dec lies 7 days before 27 Dec 2024.
    ["20 Dec", ["2023-03-01", "2024-12-27"], "2024-12-20"],
    ["March", ["2025-11-25"], "2026-03-16"],
    ["wk 50", ["2026-01-04"], "2025-12-11"],
    ["29 Feb", ["2023-06-01"], "2024-02-29"],
  ])("%s lies nearest to them", (text, days, expected) => {
    expect(settled(text, { neighbours: days.map(day) })).toBe(expected);
  });

  it("is not moved by the year above it, nor by the as-of day", () => {
    const hints = { neighbours: [day("2024-06-02")], sectionYear: 2021, asOf: day("2026-11-25") };
    expect(settled("3 Sep", hints)).toBe("2024-09-03");
  });

  it("may lie after the as-of day: it is planned", () => {
    const hints = { neighbours: [day("2026-11-20")], asOf: day("2026-11-25") };
    expect(settled("4 Dec", hints)).toBe("2026-12-04");
  });

  it.each([
    // Two digits behind a month are the year where a day of that year stands beside them.
    ["Aug 25", ["2025-06-02"], "2025-08-16"],
    ["Aug 25", ["2024-06-02"], "2024-08-25"],
    ["Aug 25", ["2026-06-02"], "2026-08-25"],
    ["Aug 25", ["2024-06-02", "2025-06-02"], "2025-08-16"],
    ["Aug 24", ["2025-06-02"], "2025-08-24"],
    ["25 Aug", ["2025-06-02"], "2025-08-25"],
  ])("%s beside %j is %s", (text, days, expected) => {
    expect(settled(text, { neighbours: days.map(day) })).toBe(expected);
  });

  it("is never farther from them than in another year", () => {
    const anyDay = fc.integer({ min: 14_000, max: 22_000 });
    fc.assert(
      fc.property(
        fc.array(anyDay, { minLength: 1, maxLength: 4 }),
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 1, max: 28 }),
        (neighbours, month, dayOfMonth) => {
          const text = `${dayOfMonth} ${["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"][month - 1]}`;
          const hints = { ...NOTHING, neighbours: neighbours as unknown as [] };
          const found = settleYear(undated(text), hints) as number;
          const distance = (one: number) =>
            Math.min(...neighbours.map((neighbour) => Math.abs(one - neighbour)));
          for (let year = 2006; year <= 2032; year += 1) {
            const two = (value: number) => String(value).padStart(2, "0");
            const other = day(`${year}-${two(month)}-${two(dayOfMonth)}`);
            expect(distance(found)).toBeLessThanOrEqual(distance(other));
          }
        },
      ),
    );
  });
});

describe("a day without a year, alone in its row,", () => {
  it("lies in the year that is named above it", () => {
    expect(settled("3 Sep", { sectionYear: 2024, asOf: day("2026-11-25") })).toBe("2024-09-03");
    expect(settled("wk 12", { sectionYear: 2024 })).toBe("2024-03-21");
  });

  it("is no day where the year above it has none such", () => {
    expect(settled("29 Feb", { sectionYear: 2025, asOf: day("2026-11-25") })).toBeNull();
  });

  it.each([
    ["Sept 3", "2026-09-03"],
    ["3 Sep", "2026-09-03"],
    ["25 Nov", "2026-11-25"],
    ["26 Nov", "2025-11-26"],
    ["Dec 31", "2025-12-31"],
    ["9/9", "2026-09-09"],
    ["wk 12", "2026-03-19"],
    ["wk 50", "2025-12-11"],
    ["March", "2026-03-16"],
    ["December", "2025-12-16"],
    // The last 29 February before the as-of day stood in 2024.
    ["29 Feb", "2024-02-29"],
    ["Feb 29", "2024-02-29"],
  ])("is the last %s up to the as-of day", (text, expected) => {
    expect(settled(text, { asOf: day("2026-11-25") })).toBe(expected);
  });

  it("is the last leap day, though 1900 had none and 2100 will have none", () => {
    expect(settled("29 Feb", { asOf: day("1904-02-28") })).toBe("1896-02-29");
    expect(settled("29 Feb", { asOf: day("1904-02-29") })).toBe("1904-02-29");
    expect(settled("29 Feb", { asOf: day("2104-02-28") })).toBe("2096-02-29");
  });

  it.each(
    textCases(`
      late Nov  | 2026-11-05 | 2025-11-25
      mid Nov   | 2026-11-05 | 2025-11-15
      Nov       | 2026-11-05 | 2025-11-15
      early Jan | 2026-01-02 | 2025-01-05
      wk 48     | 2026-11-25 | 2025-11-27
      wk 48     | 2026-11-26 | 2026-11-26`),
  )("%s on %s is no later day", (text = "", asOf = "", expected = "") => {
    expect(settled(text, { asOf: day(asOf) })).toBe(expected);
  });

  it.each(["Sept 3", "9/9", "wk 12", "March", "mid March", "Aug 25"])(
    "is left open as %s where nothing tells its year",
    (text) => {
      expect(settled(text, {})).toBeNull();
    },
  );
});
