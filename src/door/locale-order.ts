import type { DayOrder } from "../core";

/**
 * Which of day and month a locale writes first in dates of two numbers; null where the year comes
 * first, so that two numbers alone say nothing, and where the locale is not known.
 *
 * Source: Unicode CLDR short date patterns, as carried by Intl.
 *
 * @param locale such as "en_GB"
 */
export function localeOrder(locale: string): DayOrder | null {
  // The Gregorian calendar and Latin digits, since that is what people type.
  const tag = `${locale.replace(/_/g, "-")}-u-ca-gregory-nu-latn`;
  try {
    if (Intl.DateTimeFormat.supportedLocalesOf([tag]).length === 0) return null;
    const short = new Intl.DateTimeFormat(tag, { timeZone: "UTC", dateStyle: "short" });
    const parts = short.formatToParts(0);
    const first = parts.find(({ type }) => type === "day" || type === "month" || type === "year");
    if (first?.type === "day") return "day-first";
    return first?.type === "month" ? "month-first" : null;
  } catch {
    // Intl throws at what is no locale's code at all.
    return null;
  }
}
