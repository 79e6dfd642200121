import { type CivilDay, isoDay, yearMonthDay } from "../../core";

/** Where the names of months and weekdays are taken from: the Unicode CLDR, as Intl carries it. */
export const DAY_LOCALES = ["en-GB", "en-US", "fr", "es", "pt-PT", "pt-BR", "id"] as const;

type DayLocale = (typeof DAY_LOCALES)[number];

/** The day, month and year of a day as numbers, with a mark between. */
export function numbersOf(
  day: CivilDay,
  order: "day-first" | "month-first",
  { mark, shortYear, padded }: { mark: string; shortYear: boolean; padded: boolean },
): string {
  const { year, month, day: dayOfMonth } = yearMonthDay(day);
  const parts = order === "day-first" ? [dayOfMonth, month] : [month, dayOfMonth];
  const texts = parts.map((part) => (padded ? String(part).padStart(2, "0") : String(part)));
  return [...texts, shortYear ? String(year).slice(-2) : String(year)].join(mark);
}

const NAMED = {
  "3 Sep 2026": (day) => `${day.date} ${day.short} ${day.year}`,
  "3-Sep-26": (day) => `${day.date}-${day.short}-${day.year.slice(-2)}`,
  "03-Sep-2026": (day) => `${day.date.padStart(2, "0")}-${day.short}-${day.year}`,
  "3/Sep/26": (day) => `${day.date}/${day.short}/${day.year.slice(-2)}`,
  "3 Sep. 2026": (day) => `${day.date} ${day.short.replace(".", "")}. ${day.year}`,
  "3 September 2026": (day) => `${day.date} ${day.long} ${day.year}`,
  "Thursday 3 September 2026": (day) => `${day.weekday} ${day.date} ${day.long} ${day.year}`,
  "Sep 3, 2026": (day) => `${day.short} ${day.date}, ${day.year}`,
  "September 3, 2026": (day) => `${day.long} ${day.date}, ${day.year}`,
  "3 de setembro de 2026": (day) => `${day.date} de ${day.long} de ${day.year}`,
} satisfies Readonly<Record<string, (names: DayNames) => string>>;

type NamedForm = keyof typeof NAMED;

export const NAMED_FORMS = Object.keys(NAMED) as NamedForm[];

interface DayNames {
  readonly date: string;
  readonly short: string;
  readonly long: string;
  readonly weekday: string;
  readonly year: string;
}

/** A day with its month's name. @example namedDay(day, "3-Sep-26", "fr") // "3-sept.-26" */
export function namedDay(day: CivilDay, form: NamedForm, locale: DayLocale): string {
  const { year, month, day: dayOfMonth } = yearMonthDay(day);
  return NAMED[form]({
    date: String(dayOfMonth),
    short: monthName(month, "short", locale),
    long: monthName(month, "long", locale),
    weekday: weekdayName(day, locale),
    year: String(year),
  });
}

/** A day without its year. @example undatedDay(day, "fr") // "3 sept." */
export function undatedDay(day: CivilDay, locale: DayLocale): string {
  const { month, day: dayOfMonth } = yearMonthDay(day);
  return `${dayOfMonth} ${monthName(month, "short", locale)}`;
}

function monthName(month: number, form: "short" | "long", locale: DayLocale): string {
  return formatter(locale, { month: form }).format(Date.UTC(2026, month - 1, 15));
}

function weekdayName(day: CivilDay, locale: DayLocale): string {
  return formatter(locale, { weekday: "long" }).format(Date.parse(isoDay(day)));
}

const formatters = new Map<string, Intl.DateTimeFormat>();

// Making a formatter takes far longer than using one.
function formatter(locale: string, part: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
  const key = `${locale} ${JSON.stringify(part)}`;
  let known = formatters.get(key);
  if (known === undefined) {
    known = new Intl.DateTimeFormat(locale, { ...part, timeZone: "UTC" });
    formatters.set(key, known);
  }
  return known;
}
