import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { allTests, asksForZone, zoneTests } from "../../src/build/zone-tests";

describe("asksForZone", () => {
  it.each([
    ["const year = now.getFullYear();", true],
    ["new Date(2026, 10, 25)", true],
    ["new Date(year, month - 1, date, 12)", true],
    ["Intl.DateTimeFormat().resolvedOptions().timeZone", true],
    ['new Intl.DateTimeFormat("en", { dateStyle: "short" })', true],
    ['const MORNING = "2026-11-25T08:00:00";', true],
    ['process.env.TZ = "Asia/Kolkata"', true],
    ['import { addDays } from "date-fns";', true],
    ["day.toLocaleDateString()", true],
    ["now.getUTCFullYear()", false],
    ["new Date(Date.UTC(2026, 10, 25))", false],
    ['Date.parse("2026-11-25")', false],
    ['Date.parse("2026-11-25T08:00:00Z")', false],
    ['new Intl.DateTimeFormat("en", { timeZone: "UTC", dateStyle: "short" })', false],
    ['import { fr } from "date-fns/locale";', false],
    ["new Date(count * 86_400_000)", false],
  ])("of %s is %s", (text, asks) => {
    expect(asksForZone(text)).toBe(asks);
  });
});

describe("the tests that are repeated in other zones", () => {
  const files = zoneTests();

  it("are those of the rooms where days meet a zone, and those that read the zone's own calendar", () => {
    expect(files).toEqual(
      expect.arrayContaining([
        ...["tests/door/days-of-instants.test.ts", "tests/local/report.test.ts"],
        ...["tests/build/built-answers.test.ts", "tests/samples/samples.test.ts"],
        ...["tests/workbook/recording.test.ts", "tests/core/dates/iso-week.test.ts"],
        "tests/sidebar/sections.test.ts",
      ]),
    );
  });

  it("leave out only what has no word of a zone in it", () => {
    const rest = allTests().filter((file) => !files.includes(file));
    expect(rest.filter((file) => asksForZone(readFileSync(file, "utf8")))).toEqual([]);
    expect(rest).toContain("tests/workbook/faults/tabs-cut-off.test.ts");
    expect(rest).toContain("tests/sidebar/nasty-text.test.ts");
    expect(rest).toContain("tests/core/dates/civil-day.test.ts");
  });
});
