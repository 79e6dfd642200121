import { format } from "date-fns";
import { enGB, enUS, es, fr, id, type Locale, pt, ptBR } from "date-fns/locale";
import { describe, expect, it } from "vitest";
import { type CivilDay, civilDay, dayColumnReader, isoDay } from "../../../src/core";
import { localeOrder } from "../../../src/door/locale-order";

// External check: the day that date-fns 4 and Intl (Unicode CLDR) write in each language must be
// the day that is read.

const FROM = civilDay(2024, 1, 1) as CivilDay;
/** Two years of days, one of them a leap year. */
const DAYS = Array.from({ length: 731 }, (_, index) => (FROM + index) as CivilDay);
const AS_OF = civilDay(2026, 11, 25) as CivilDay;

/** Noon, so that no zone's change of clocks moves the day. */
function localNoon(day: CivilDay): Date {
  const [year = 0, month = 1, date = 1] = isoDay(day).split("-").map(Number);
  return new Date(year, month - 1, date, 12);
}

/** The first day that is read otherwise than it was written; null when there is none. */
function misread(locale: string, write: (date: Date) => string): string | null {
  const texts = DAYS.map((day) => write(localNoon(day)));
  const { read } = dayColumnReader(() => texts, {
    asOf: AS_OF,
    usualOrder: () => localeOrder(locale),
  });
  for (const [index, text] of texts.entries()) {
    const reading = read(text);
    const day = reading.kind === "day" ? isoDay(reading.day) : reading.kind;
    const wanted = isoDay(DAYS[index] as CivilDay);
    if (day !== wanted) return `"${text}" (${wanted}) was read as ${day}`;
  }
  return null;
}

const LOCALES: readonly (readonly [string, Locale])[] = [
  ["en_GB", enGB],
  ["en_US", enUS],
  ["fr_FR", fr],
  ["es_ES", es],
  ["pt_PT", pt],
  ["pt_BR", ptBR],
  ["id_ID", id],
];

const PATTERNS = [
  "d MMMM yyyy",
  "d MMM yyyy",
  "dd/MM/yyyy",
  "d-MMM-yy",
  "EEEE d MMMM yyyy",
  "d/M/yy",
  "d MMM. yyyy",
  "dd.MM.yyyy",
  "MMMM d, yyyy",
  "MMM d yyyy",
  "yyyy-MM-dd",
  "yyyy/MM/dd",
  "EEE d MMM yy",
  "d MMMM yyyy HH:mm",
  "dd/MM/yyyy HH:mm:ss",
  "MMM dd, yyyy h:mm a",
];

describe.each(LOCALES)("days that date-fns writes in %s", (name, locale) => {
  it.each(PATTERNS)("are read from the pattern %s", (pattern) => {
    // A locale that writes the month first doesn't matter: the column's own dates show the order.
    expect(misread(name, (date) => format(date, pattern, { locale }))).toBeNull();
  });

  it.each(["PPPP", "PPP", "PP", "P"])("are read from the locale's own form %s", (form) => {
    expect(misread(name, (date) => format(date, form, { locale }))).toBeNull();
  });
});

const INTL_LOCALES = [
  "en-GB",
  "en-US",
  "en-AU",
  "en-IN",
  "fr-FR",
  "fr-CA",
  "es-ES",
  "es-MX",
  "pt-PT",
  "pt-BR",
  "id-ID",
];

describe.each(INTL_LOCALES)("days that Intl writes in %s", (locale) => {
  it.each(["full", "long", "medium", "short"] as const)(
    "are read from the style %s",
    (dateStyle) => {
      const { format: write } = new Intl.DateTimeFormat(locale, { dateStyle });
      expect(misread(locale, write)).toBeNull();
    },
  );

  it.each([
    { day: "numeric", month: "long", year: "numeric" },
    { day: "2-digit", month: "short", year: "2-digit" },
    { weekday: "short", day: "numeric", month: "short", year: "numeric" },
  ] as const)("are read with CLDR's names of months: %j", (parts) => {
    const { format: write } = new Intl.DateTimeFormat(locale, parts);
    expect(misread(locale, write)).toBeNull();
  });
});

describe("the order of day and month", () => {
  it("is the column's own, whatever the workbook's locale says", () => {
    const dayFirst = (date: Date) => format(date, "d/M/yyyy");
    const monthFirst = (date: Date) => format(date, "M/d/yyyy");
    for (const locale of ["en_GB", "en_US", "ja_JP"]) {
      expect(misread(locale, dayFirst)).toBeNull();
      expect(misread(locale, monthFirst)).toBeNull();
    }
  });

  it("is left open where the column has no day above 12 and the locale doesn't say", () => {
    const texts = ["3/9/2026", "4/5/2026"];
    const reader = (order: "day-first" | "month-first" | null) =>
      dayColumnReader(() => texts, { asOf: AS_OF, usualOrder: () => order });
    expect(reader("day-first").read("3/9/2026")).toMatchObject({ day: civilDay(2026, 9, 3) });
    expect(reader("month-first").read("3/9/2026")).toMatchObject({ day: civilDay(2026, 3, 9) });
    expect(reader(null).read("3/9/2026")).toMatchObject({
      kind: "unread",
      why: { code: "either-day", days: [civilDay(2026, 9, 3), civilDay(2026, 3, 9)] },
    });
  });
});
