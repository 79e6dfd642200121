import { describe, expect, it } from "vitest";
import {
  type CivilDay,
  civilDay,
  daysInMonth,
  daysLater,
  isoWeekday,
  yearMonthDay,
} from "../../../src/core/dates/civil-day";
import { isoDay } from "../../../src/core/dates/day-text";
import { firstDayOf, isoMonth, monthOf } from "../../../src/core/dates/month";

const MILLISECONDS_A_DAY = 86_400_000;

describe("civilDay and yearMonthDay", () => {
  it("agree with the runtime's calendar on every day of 441 years (ECMAScript Date.UTC)", () => {
    const first = Date.UTC(1760, 0, 1) / MILLISECONDS_A_DAY;
    const last = Date.UTC(2200, 11, 31) / MILLISECONDS_A_DAY;
    const wrong: number[] = [];
    for (let count = first; count <= last; count += 1) {
      const date = new Date(count * MILLISECONDS_A_DAY);
      const [year, month, dayOfMonth] = [
        date.getUTCFullYear(),
        date.getUTCMonth() + 1,
        date.getUTCDate(),
      ];
      const back = yearMonthDay(count as CivilDay);
      const same = back.year === year && back.month === month && back.day === dayOfMonth;
      if (civilDay(year, month, dayOfMonth) !== count || !same) wrong.push(count);
    }
    // 441 years of 365 days and 107 leap days.
    expect(last - first + 1).toBe(161_072);
    expect(wrong).toEqual([]);
  });

  it("knows days long before and after (ECMAScript Date.UTC)", () => {
    for (const text of ["0001-01-01", "0004-02-29", "1000-03-01", "4000-02-29", "9999-12-31"]) {
      const [year, month, dayOfMonth] = text.split("-").map(Number) as [number, number, number];
      expect(civilDay(year, month, dayOfMonth)).toBe(Date.parse(text) / MILLISECONDS_A_DAY);
      expect(isoDay(civilDay(year, month, dayOfMonth) as CivilDay)).toBe(text);
    }
  });

  it.each([
    [2026, 2, 29],
    [1900, 2, 29],
    [2100, 2, 29],
    [2026, 4, 31],
    [2026, 0, 1],
    [2026, 13, 1],
    [2026, 1, 0],
    [2026, 1, 32],
    [2026, 1, -1],
    [2026, 1.5, 1],
    [2026, 1, 1.5],
    [2026.5, 1, 1],
    [Number.NaN, 1, 1],
    [2026, Number.NaN, 1],
    [Number.POSITIVE_INFINITY, 1, 1],
  ])("has no day %s-%s-%s", (year, month, dayOfMonth) => {
    expect(civilDay(year, month, dayOfMonth)).toBeNull();
  });

  it("has the leap days of 2000 and 2024", () => {
    expect(civilDay(2000, 2, 29)).not.toBeNull();
    expect(civilDay(2024, 2, 29)).not.toBeNull();
  });
});

describe("days around a day", () => {
  const first = civilDay(2026, 2, 27) as CivilDay;

  it("go over the end of a month both ways", () => {
    expect(isoDay(daysLater(first, 2))).toBe("2026-03-01");
    expect(isoDay(daysLater(first, -27))).toBe("2026-01-31");
  });

  it("fall on the runtime's weekdays, Monday first, also before 1970", () => {
    for (let days = -1000; days <= 1000; days += 1) {
      const weekday = new Date(days * MILLISECONDS_A_DAY).getUTCDay();
      expect(isoWeekday(days as CivilDay)).toBe(weekday === 0 ? 7 : weekday);
    }
  });

  it("fill months of the runtime's lengths", () => {
    for (const year of [1900, 2000, 2023, 2024]) {
      for (let month = 1; month <= 12; month += 1) {
        expect(daysInMonth(year, month)).toBe(new Date(Date.UTC(year, month, 0)).getUTCDate());
      }
    }
  });
});

describe("months", () => {
  it("count on through the years", () => {
    const december = monthOf(civilDay(2025, 12, 31) as CivilDay);
    const january = monthOf(civilDay(2026, 1, 1) as CivilDay);
    expect(january - december).toBe(1);
    expect([isoMonth(december), isoMonth(january)]).toEqual(["2025-12", "2026-01"]);
    expect(isoDay(firstDayOf(december))).toBe("2025-12-01");
    expect(isoDay(firstDayOf(january))).toBe("2026-01-01");
  });
});

describe("a day as text", () => {
  const cases = [
    ["2026-09-03", 2026, 9, 3],
    ["2024-02-29", 2024, 2, 29],
    ["0987-12-01", 987, 12, 1],
  ] as const;
  it.each(cases)("is %s for programs", (asIso, year, month, dayOfMonth) => {
    expect(isoDay(civilDay(year, month, dayOfMonth) as CivilDay)).toBe(asIso);
  });
});
