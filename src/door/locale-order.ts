import type { DayOrder } from "../core";

/**
 * Which of day and month a locale writes first in dates of two numbers; null where the year comes
 * first, so that two numbers alone say nothing.
 *
 * Source: Unicode CLDR, short date patterns, as carried by Intl in the tests' own check.
 */
export function localeOrder(locale: string): DayOrder | null {
  const [language, ...parts] = locale.replace(/-/g, "_").split("_");
  const country = parts.find((part) => /^[A-Z]{2}$/.test(part));
  if (language === "en") {
    if (country === undefined || country === "US" || country === "PH") return "month-first";
    return country === "CA" || country === "ZA" ? null : "day-first";
  }
  if (YEAR_FIRST.has(language ?? "")) return null;
  return country === "PR" || country === "PA" ? "month-first" : "day-first";
}

const YEAR_FIRST: ReadonlySet<string> = new Set([
  ...["ja", "ko", "zh", "hu", "lt", "sv", "eu", "mn", "si", "ky"],
]);
