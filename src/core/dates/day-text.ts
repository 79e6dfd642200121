import { type CivilDay, yearMonthDay } from "./civil-day";

const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

/** A day as ISO 8601 text. @example isoDay(civilDay(2026, 9, 3)) // "2026-09-03" */
export function isoDay(day: CivilDay): string {
  const { year, month, day: dayOfMonth } = yearMonthDay(day);
  return `${String(year).padStart(4, "0")}-${two(month)}-${two(dayOfMonth)}`;
}

/** A day as a person writes it in a sentence. @example sentenceDay(civilDay(2026, 9, 3)) // "3 Sep 2026" */
export function sentenceDay(day: CivilDay): string {
  const { year, month, day: dayOfMonth } = yearMonthDay(day);
  return `${dayOfMonth} ${MONTHS[month - 1]} ${year}`;
}

function two(value: number): string {
  return String(value).padStart(2, "0");
}
