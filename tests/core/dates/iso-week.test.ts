import { getISOWeek, getISOWeekYear } from "date-fns";
import { describe, expect, it } from "vitest";
import { isoWeekday } from "../../../src/core/dates/civil-day";
import { isoWeek, isoWeekText, mondayOf } from "../../../src/core/dates/iso-week";
import { day } from "../../support/days";
import { fixture } from "../../support/fixtures";

const { expected } = fixture<
  unknown,
  { days: readonly { readonly day: string; readonly week: string }[] }
>("iso-week");

describe("published values: ISO 8601 week dates, with R's %G-W%V-%u (tests/fixtures/iso-week)", () => {
  it.each(expected.days)("$day is $week", ({ day: text, week }) => {
    const that = day(text);
    expect(`${isoWeekText(isoWeek(that))}-${isoWeekday(that)}`).toBe(week);
  });
});

describe("isoWeek", () => {
  it("agrees with date-fns on every day of 60 years", () => {
    const wrong: string[] = [];
    const date = new Date(1990, 0, 1, 12);
    for (; date.getFullYear() < 2050; date.setDate(date.getDate() + 1)) {
      const { year, week } = isoWeek(
        (Date.UTC(date.getFullYear(), date.getMonth(), date.getDate()) / 86_400_000) as never,
      );
      if (year !== getISOWeekYear(date) || week !== getISOWeek(date)) wrong.push(date.toString());
    }
    expect(wrong).toEqual([]);
  });

  it("is taken back by the Monday it starts with", () => {
    for (let that = day("2003-12-20"); that < day("2012-01-20"); that = (that + 1) as never) {
      const monday = mondayOf(isoWeek(that));
      expect(isoWeekday(monday)).toBe(1);
      expect(that - monday).toBe(isoWeekday(that) - 1);
    }
  });
});
