import { type CivilDay, yearMonthDay } from "../core";
import * as text from "../sentences/made/days";

/** A day as a person writes it in a sentence. @example dayWords(civilDay(2026, 9, 3)) // "3 Sep 2026" */
export function dayWords(civilDay: CivilDay): string {
  const { year, month, day } = yearMonthDay(civilDay);
  const name = text.monthName({
    number: String(month) as Parameters<typeof text.monthName>[0]["number"],
  });
  return text.day({ day: String(day), month: name, year: String(year) });
}
