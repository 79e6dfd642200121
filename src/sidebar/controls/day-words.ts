import { isoDay, mondayOf } from "../../core";
import { away } from "../../sentences/made/controls";
import * as text from "../../sentences/made/days";

interface DayParts {
  readonly year: string;
  readonly month: string;
  readonly day: string;
}

/** ISO 8601 text in parts; null for anything else, which is then shown as it is. */
function partsOf(iso: string): DayParts | null {
  const [, year, monthNumber, day] = /^(\d{4})-(\d\d)-(\d\d)$/.exec(iso) ?? [];
  const month = monthName(monthNumber);
  if (year === undefined || month === undefined || day === undefined) return null;
  return { year, month, day: String(Number(day)) };
}

/** @param number from "01" */
const monthName = (number: string | undefined): string | undefined =>
  /^(0[1-9]|1[0-2])$/.test(number ?? "")
    ? text.monthName({ number: String(Number(number)) as MonthNumber })
    : undefined;

type MonthNumber = Parameters<typeof text.monthName>[0]["number"];
type WeekdayNumber = Parameters<typeof text.weekdayName>[0]["number"];

/** @example dayText("2026-11-05") // "5 Nov 2026" */
export function dayText(iso: string): string {
  const parts = partsOf(iso);
  return parts === null ? iso : text.day(parts);
}

/** A day of the weeks around now, by its weekday. @example weekdayText("2026-11-25") // "Wed 25 Nov" */
export function weekdayText(iso: string): string {
  const parts = partsOf(iso);
  const number = new Date(`${iso}T00:00:00Z`).getUTCDay();
  if (parts === null || Number.isNaN(number)) return iso;
  const weekday = text.weekdayName({ number: String(number) as WeekdayNumber });
  return text.weekdayDay({ ...parts, weekday });
}

/**
 * The days of a window without saying twice what both share.
 *
 * @example windowText("2026-11-10", "2026-11-16") // "10 – 16 Nov 2026"
 */
export function windowText(from: string, by: string): string {
  const first = partsOf(from);
  const last = partsOf(by);
  if (from === by) return dayText(from);
  return text.window({ from: beginning(first, last) ?? dayText(from), by: dayText(by) });
}

/** The first day without what it shares with the last; null where nothing is shared. */
function beginning(first: DayParts | null, last: DayParts | null): string | null {
  if (first === null || last === null || first.year !== last.year) return null;
  return first.month === last.month ? first.day : text.dayMonth(first);
}

const DAY_MS = 86_400_000;

/** Days from one ISO day to another, negative where it lies before; null where one is no day. */
export function daysBetween(from: string, to: string): number | null {
  if (partsOf(from) === null || partsOf(to) === null) return null;
  const days = (Date.parse(to) - Date.parse(from)) / DAY_MS;
  return Number.isNaN(days) ? null : days;
}

/** How far a day is away; empty where it is not known. @example awayText(51) // "in 51 days" */
export function awayText(days: number | null): string {
  if (days === null) return "";
  return away({ days: Math.abs(days), when: days < 0 ? "ago" : "ahead" });
}

/** @example monthText("2026-11") // "Nov 2026" */
export function monthText(iso: string): string {
  const [, year, monthNumber] = /^(\d{4})-(\d\d)$/.exec(iso) ?? [];
  const month = monthName(monthNumber);
  return year === undefined || month === undefined ? iso : text.month({ month, year });
}

/** A week, a month, or another stretch as it is written. @example periodText("2026-W48") // "week of 23 Nov 2026" */
export function periodText(period: string): string {
  const [, year, week] = /^(\d{4})-W(\d\d)$/.exec(period) ?? [];
  if (year === undefined) return monthText(period);
  const monday = mondayOf({ year: Number(year), week: Number(week) });
  return text.weekOf({ day: dayText(isoDay(monday)) });
}
