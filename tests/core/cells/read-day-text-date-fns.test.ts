import { format } from "date-fns";
import { enGB, enUS } from "date-fns/locale";
import { describe, expect, it } from "vitest";
import { dayColumnReader } from "../../../src/core/cells/read-day-column";
import { day, iso } from "../../support/days";

// Date-fns writes the dates, so that the forms read are another author's and not ours.
const YEAR_FIRST = [
  "yyyy-MM-dd",
  "yyyy/MM/dd",
  "yyyy.MM.dd",
  "yyyy M d",
  "yyyyMMdd",
  "yyyy-MM-dd HH:mm",
  "yyyy-MM-dd'T'HH:mm:ss",
  "yyyy-MM-dd'T'HH:mm:ss.SSS",
  "RRRR-'W'II-i",
  "RRRR'W'IIi",
] as const;
const NAMED = [
  "d MMM yyyy",
  "dd-MMM-yy",
  "dd-MMM-yyyy",
  "ddMMMyyyy",
  "do MMMM yyyy",
  "MMMM do, yyyy",
  "MMM d, yyyy",
  "MMM d, yyyy, h:mm a",
  "EEE d MMM yyyy",
  "EEEE, d MMMM yyyy",
  "EEEE, MMMM do, yyyy",
  "EEE, MMM d, yy",
  "yyyy MMM d",
  "yyyy-MMM-dd",
  "d. MMM yyyy HH:mm:ss",
  "PP",
  "PPP",
  "PPPP",
  "PPp",
] as const;
const DAY_FIRST = [
  "d/M/yyyy",
  "dd/MM/yyyy",
  "dd/MM/yy",
  "d.M.yyyy",
  "dd-MM-yyyy",
  "d M yyyy",
  "d/M/yy HH:mm",
] as const;
const MONTH_FIRST = ["M/d/yyyy", "MM/dd/yyyy", "MM/dd/yy", "M-d-yyyy", "M/d/yyyy h:mm a"] as const;

/** Days of four years, every 11th, so that every month, weekday and a leap day's year come up. */
const DAYS = Array.from({ length: 134 }, (_, index) => {
  const date = new Date(2023, 6, 1 + 11 * index, 12);
  const text = [date.getFullYear(), date.getMonth() + 1, date.getDate()]
    .map((part) => String(part).padStart(2, "0"))
    .join("-");
  return { date, text };
});

function columnOf(pattern: string, locale = enGB) {
  const texts = DAYS.map(({ date }) => format(date, pattern, { locale }));
  const { read } = dayColumnReader(() => texts, {
    usualOrder: () => null,
    asOf: day("2026-11-25"),
  });
  return texts.map((text) => {
    const reading = read(text);
    return reading.kind === "day" ? iso(reading.day) : `${text}: ${JSON.stringify(reading)}`;
  });
}

const ALL = DAYS.map(({ text }) => text);

describe("a column of dates that date-fns has written", () => {
  it.each(YEAR_FIRST)("in the form %s reads to the same days", (pattern) => {
    expect(columnOf(pattern)).toEqual(ALL);
  });

  it.each(NAMED)("in the form %s reads to the same days, British and American", (pattern) => {
    expect(columnOf(pattern, enGB)).toEqual(ALL);
    expect(columnOf(pattern, enUS)).toEqual(ALL);
  });

  it.each(DAY_FIRST)("in the form %s is known for day-first by its own days", (pattern) => {
    expect(columnOf(pattern)).toEqual(ALL);
  });

  it.each(MONTH_FIRST)("in the form %s is known for month-first by its own days", (pattern) => {
    expect(columnOf(pattern)).toEqual(ALL);
  });
});
