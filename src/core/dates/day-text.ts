import { type CivilDay, yearMonthDay } from "./civil-day";

/** A day as ISO 8601 text. @example isoDay(civilDay(2026, 9, 3)) // "2026-09-03" */
export function isoDay(day: CivilDay): string {
  const { year, month, day: dayOfMonth } = yearMonthDay(day);
  return `${String(year).padStart(4, "0")}-${two(month)}-${two(dayOfMonth)}`;
}

function two(value: number): string {
  return String(value).padStart(2, "0");
}
