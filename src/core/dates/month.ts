import { type CivilDay, civilDay, yearMonthDay } from "./civil-day";

declare const monthBrand: unique symbol;

/** A calendar month as a whole number, year * 12 + month - 1, so that months can be counted through. */
export type Month = number & { readonly [monthBrand]: true };

/** The month that a day lies in. */
export function monthOf(day: CivilDay): Month {
  const { year, month } = yearMonthDay(day);
  return (year * 12 + month - 1) as Month;
}

/** A month as ISO 8601 text. @example isoMonth(monthOf(civilDay(2026, 9, 3))) // "2026-09" */
export function isoMonth(month: Month): string {
  return `${Math.floor(month / 12)}-${String((month % 12) + 1).padStart(2, "0")}`;
}

/** The first day of a month. */
export function firstDayOf(month: Month): CivilDay {
  return civilDay(Math.floor(month / 12), (month % 12) + 1, 1) as CivilDay;
}
