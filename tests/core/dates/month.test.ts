import { describe, expect, it } from "vitest";
import { firstDayOf, isoMonth, type Month, monthOf } from "../../../src/core/dates/month";
import { day, iso } from "../../support/days";

describe("a month", () => {
  it.each([
    ["2026-09-03", "2026-09"],
    ["2026-01-01", "2026-01"],
    ["2026-12-31", "2026-12"],
    ["2024-02-29", "2024-02"],
    ["1969-12-31", "1969-12"],
  ])("of %s is %s", (text, expected) => {
    expect(isoMonth(monthOf(day(text)))).toBe(expected);
  });

  it("starts on its first day, for 400 years on end, each following the one before", () => {
    let month = monthOf(day("1850-01-01"));
    for (let at = 0; at < 4800; at += 1) {
      const first = firstDayOf(month);
      const text = iso(first) as string;
      expect(text).toBe(`${isoMonth(month)}-01`);
      expect([monthOf(first), monthOf((first - 1) as typeof first)]).toEqual([month, month - 1]);
      month = (month + 1) as Month;
    }
    expect(isoMonth(month)).toBe("2250-01");
  });
});
