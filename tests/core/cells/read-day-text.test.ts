import { describe, expect, it } from "vitest";
import {
  type DayTextReading,
  inOrder,
  readDayText,
  type UndatedDay,
} from "../../../src/core/cells/read-day-text";
import { day, iso } from "../../support/days";

const dayOf = (reading: DayTextReading) =>
  reading.kind === "day" ? iso(reading.day) : JSON.stringify(reading);

function undated(reading: DayTextReading): UndatedDay {
  if (reading.kind !== "undated") throw new Error(`read as ${reading.kind}`);
  return reading;
}

/** A day in words that a test can compare: its ISO text, or its day in a year that is not written. */
function way(settled: ReturnType<typeof inOrder>, year = 2026): string | null {
  if (settled === null || typeof settled === "number") return iso(settled);
  return `${iso(settled.inYear(year))}, undated`;
}

describe("readDayText on a day written out", () => {
  it.each([
    ["2026-09-03", "2026-09-03"],
    ["2026/9/3", "2026-09-03"],
    ["2026.09.03", "2026-09-03"],
    ["20260903", "2026-09-03"],
    ["  2026-09-03  ", "2026-09-03"],
    ["2026-09-03T14:05:00Z", "2026-09-03"],
    ["2026-09-03 14:05", "2026-09-03"],
    ["3-Sep-2026", "2026-09-03"],
    ["3 Sep 26", "2026-09-03"],
    ["03SEP2026", "2026-09-03"],
    ["3rd September, 2026", "2026-09-03"],
    ["September 3, 2026", "2026-09-03"],
    ["Thu, 3 Sep 2026", "2026-09-03"],
    ["3 sept. 2026", "2026-09-03"],
    ["3 septembre 2026", "2026-09-03"],
    ["1er août 2026", "2026-08-01"],
    ["3 de septiembre de 2026", "2026-09-03"],
    ["3 de setembro de 2026", "2026-09-03"],
    ["17 Agustus 2026", "2026-08-17"],
    ["2026 Sep 3", "2026-09-03"],
    ["2026-W36-4", "2026-09-03"],
    ["２０２６-０９-０３", "2026-09-03"],
    ["29 Feb 2024", "2024-02-29"],
  ])("reads %s and has nothing to add", (text, expected) => {
    expect(readDayText(text)).toEqual({ kind: "day", day: day(expected), isPlain: true });
  });

  it("takes two digits of a year as 1970 to 2069", () => {
    expect(dayOf(readDayText("3 Sep 69"))).toBe("2069-09-03");
    expect(dayOf(readDayText("3 Sep 70"))).toBe("1970-09-03");
  });
});

describe("readDayText on two numbers that may be day and month", () => {
  it.each([
    ["3/9/26", "2026-09-03", "2026-03-09"],
    ["3-9-2026", "2026-09-03", "2026-03-09"],
    ["03.09.2026", "2026-09-03", "2026-03-09"],
    ["3 / 9 / 2026", "2026-09-03", "2026-03-09"],
    ["25/9/2026", "2026-09-25", null],
    ["9/25/2026", null, "2026-09-25"],
    ["29/2/2024", "2024-02-29", null],
    ["31/12/1969", "1969-12-31", null],
    ["3/9", "2026-09-03, undated", "2026-03-09, undated"],
    ["12/3", "2026-03-12, undated", "2026-12-03, undated"],
    ["29-2", "null, undated", null],
    ["2-29", null, "null, undated"],
  ])("leaves %s open as far as it is open", (text, dayFirst, monthFirst) => {
    const reading = readDayText(text);
    if (reading.kind !== "either-order") throw new Error(`read as ${reading.kind}`);
    expect(way(inOrder(reading, "day-first"))).toBe(dayFirst);
    expect(way(inOrder(reading, "month-first"))).toBe(monthFirst);
  });

  it.each([
    ["3/9/26", 3, 9, 2026],
    ["25/9/2026", 25, 9, 2026],
    ["9/25/70", 9, 25, 1970],
    ["3/9", 3, 9, null],
    ["29/2", 29, 2, null],
  ])("gives the numbers of %s as they stand", (text, first, second, year) => {
    expect(readDayText(text)).toEqual({ kind: "either-order", first, second, year });
  });

  it("is sure where both ways are one day", () => {
    expect(readDayText("9/9/2026")).toEqual({
      kind: "day",
      day: day("2026-09-09"),
      isPlain: true,
    });
    const { inYear, orElse } = undated(readDayText("9/9"));
    expect([iso(inYear(2024)), orElse]).toEqual(["2024-09-09", null]);
  });
});

describe("readDayText on a span", () => {
  it.each([
    // The middle day: 31 days give the 16th, 30 the 15th, 28 the 14th.
    ["3/2026", "2026-03-16"],
    ["2026-09", "2026-09-15"],
    ["February 2026", "2026-02-14"],
    ["mid March 2026", "2026-03-16"],
    ["early March 2026", "2026-03-05"],
    ["end of March 2026", "2026-03-25"],
    // ISO week 12 of 2026 is Monday 16 to Sunday 22 March; its middle day is the Thursday.
    ["wk 12 2026", "2026-03-19"],
    ["week 12, 2026", "2026-03-19"],
    ["2026-W12", "2026-03-19"],
    ["2026W12", "2026-03-19"],
    ["semaine 12 2026", "2026-03-19"],
    // 2026 has 53 weeks by ISO 8601.
    ["2026-W53", "2026-12-31"],
  ])("takes the middle day of %s and says so", (text, expected) => {
    expect(readDayText(text)).toEqual({ kind: "day", day: day(expected), isPlain: false });
  });
});

describe("readDayText on a date without a year", () => {
  it.each([
    ["Sept 3", "2026-09-03"],
    ["3 Sep", "2026-09-03"],
    ["Tue 3 Sep", "2026-09-03"],
    ["25 Nov", "2026-11-25"],
    ["wk 12", "2026-03-19"],
    ["wk 53", "2026-12-31"],
    ["week 1", "2026-01-01"],
    ["March", "2026-03-16"],
    ["early Jan", "2026-01-05"],
    ["mid Nov", "2026-11-15"],
    ["late Nov", "2026-11-25"],
    ["fin de mayo", "2026-05-25"],
  ])("knows the day of %s once the year is known", (text, expected) => {
    const { inYear, orElse } = undated(readDayText(text));
    expect(iso(inYear(2026))).toBe(expected);
    expect(orElse).toBeNull();
  });

  it.each([
    ["29 Feb", [null, "2024-02-29", null]],
    ["Feb 29", [null, "2024-02-29", null]],
    ["wk 53", [null, null, null]],
    ["31 Apr", [null, null, null]],
  ])("knows that not every year has %s", (text, expected) => {
    const { inYear } = undated(readDayText(text));
    expect([2023, 2024, 2025].map((year) => iso(inYear(year)))).toEqual(expected);
  });

  it.each([
    // A month and two digits above 12, month first: the digits may be the year's.
    ["Aug 25", "2026-08-25", "2025-08-16"],
    ["Feb 13", "2026-02-13", "2013-02-14"],
    ["Dec 31", "2026-12-31", "2031-12-16"],
    ["August 31", "2026-08-31", "2031-08-16"],
    ["Aug 12", "2026-08-12", null],
    ["25 Aug", "2026-08-25", null],
    ["Aug 5", "2026-08-05", null],
  ])("sees whether %s can be a month of a year", (text, asDay, asMonth) => {
    const { inYear, orElse } = undated(readDayText(text));
    expect(iso(inYear(2026))).toBe(asDay);
    expect(iso(orElse)).toBe(asMonth);
  });

  it.each([
    ["Aug 32", "2032-08-16"],
    ["Aug 69", "2069-08-16"],
    ["Aug 70", "1970-08-16"],
  ])(
    "takes the digits of %s as a year, since no month is so long, and says so",
    (text, expected) => {
      const reading = readDayText(text);
      expect(dayOf(reading)).toBe(expected);
      expect(reading).toMatchObject({ isPlain: false });
    },
  );
});

describe("readDayText on what is no day", () => {
  it.each([
    "",
    "soon",
    "n/a",
    "31/4/2026",
    "30 Feb 2026",
    "2026-13-01",
    "2026-02-29",
    "0/0/2026",
    "32/13/2026",
    "13/13/2026",
    "2026-W00",
    "2026-W54",
    "2026-W54-1",
    // 2025 has 52 weeks by ISO 8601: 28 Dec 2025, which always lies in the last week, is in week 52.
    "2025-W53",
    "2025-W53-1",
    "wk 53 2025",
    "wk 0 2026",
    "12",
    "1/2/3/4",
    "Bay 3 March 2026",
    "3 Sep 2026 Sep 4",
    "x".repeat(5000),
    "9".repeat(5000),
    "3 Sep ".repeat(2000),
    "=TODAY()",
    "🌱",
  ])("leaves %s unread", (text) => {
    expect(readDayText(text).kind).toBe("unread");
  });
});
