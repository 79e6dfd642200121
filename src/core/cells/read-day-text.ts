import {
  type CivilDay,
  civilDay,
  daysInMonth,
  daysLater,
  isDateFiller,
  isoWeek,
  isWeekWord,
  mondayOf,
  monthOfWord,
  thirdOfWord,
} from "../dates";
import { normalText } from "../words";
import type { Unread } from "./unread";

/** What a text says when a day is due in it. */
export type DayTextReading =
  | { readonly kind: "day"; readonly day: CivilDay; readonly isPlain: boolean }
  | UndatedDay
  /** Two numbers that could be day and month either way round. */
  | {
      readonly kind: "either-order";
      readonly first: number;
      readonly second: number;
      readonly year: number | null;
    }
  | { readonly kind: "unread"; readonly why: Unread };

/** A day or a span whose year is not written. */
export interface UndatedDay {
  readonly kind: "undated";
  /** The day in a given year; null where that year has no such day. */
  inYear(year: number): CivilDay | null;
  /** "Aug 25" can also be August 2025: the middle of that month; else null. */
  readonly orElse: CivilDay | null;
}

const UNREAD: DayTextReading = { kind: "unread", why: { code: "not-a-day" } };
const NO_SUCH_DAY: DayTextReading = { kind: "unread", why: { code: "no-such-day" } };
const TIME_OF_DAY =
  /(?:T|[ ,]+)\d{1,2}[:h]\d{2}(?::\d{2})?(?:\.\d+)?\s*(?:[ap]\.?m\.?)?(?:Z|[+-]\d{2}:?\d{2})?$/i;
/** No date is longer, and a cell may hold 50,000 letters. */
const LONGEST = 60;

/**
 * Reads a date as people type it: 2026-09-03, 3/9/26, 3-Sep-2026, "3 sept. 2026", "Sept 3",
 * "mid March 2026", "wk 12 2026", "3/2026"; a time of day behind it is dropped.
 *
 * A span (a month, a third of a month, a week) is read as its middle day and says so.
 */
export function readDayText(text: string): DayTextReading {
  if (text.length > LONGEST) return UNREAD;
  const plain = withoutWeekday(text.normalize("NFKC").trim().replace(TIME_OF_DAY, ""));
  return (
    readIsoWeek(plain) ??
    readYearFirst(plain) ??
    readNumbers(plain) ??
    readWords(normalText(plain)) ??
    UNREAD
  );
}

/** The middle day of a month: the 16th of 31 days, the 15th of 30, the 14th of February. */
function middleOfMonth(year: number, month: number): CivilDay | null {
  return civilDay(year, month, Math.ceil(daysInMonth(year, month) / 2));
}

/** Two digits are 1970 to 2069. */
function fullYear(text: string): number {
  const year = Number(text);
  if (text.length > 2) return year;
  return year < 70 ? 2000 + year : 1900 + year;
}

/** "Monday, 1/01/2024" without its weekday. */
function withoutWeekday(text: string): string {
  const match = /^(\p{L}+)[-.,]*\p{L}*[.,]?\s+(\d.*)$/u.exec(text);
  return match && isDateFiller(normalText(match[1] as string)) ? (match[2] as string) : text;
}

function readIsoWeek(text: string): DayTextReading | null {
  const match = /^(\d{4})-?W(\d{1,2})(?:-?([1-7]))?$/i.exec(text);
  if (!match) return null;
  const year = Number(match[1]);
  const week = Number(match[2]);
  if (match[3] === undefined) return span(middleOfWeek(year, week));
  return plainDay(daysLaterOrNull(mondayOfWeek(year, week), Number(match[3]) - 1));
}

function readYearFirst(text: string): DayTextReading | null {
  const full =
    /^(\d{4}) ?([-/. ]) ?(\d{1,2}) ?\2 ?(\d{1,2})$/.exec(text) ??
    /^((?:19|20)\d\d)()(\d{2})(\d{2})$/.exec(text);
  if (full) return plainDay(civilDay(Number(full[1]), Number(full[3]), Number(full[4])));
  const month = /^(\d{4})[-/.](\d{1,2})$/.exec(text);
  return month ? span(monthOrNull(Number(month[1]), Number(month[2]))) : null;
}

function readNumbers(text: string): DayTextReading | null {
  const three = /^(\d{1,2})\s*[-/. ]\s*(\d{1,2})\s*[-/. ]\s*'?(\d{4}|\d{2})$/.exec(text);
  if (three) return eitherOrder(Number(three[1]), Number(three[2]), fullYear(three[3] as string));
  const two = /^(\d{1,2})\s*([-/.])\s*(\d{4}|\d{1,2})\.?$/.exec(text);
  if (!two) return null;
  if ((two[3] as string).length === 4) return span(monthOrNull(Number(two[3]), Number(two[1])));
  // "12.5" is a number in too many tables to be called a date.
  return two[2] === "." ? null : eitherOrder(Number(two[1]), Number(two[3]), null);
}

function eitherOrder(first: number, second: number, year: number | null): DayTextReading {
  const possible = (day: number, month: number) => civilDay(year ?? 2024, month, day) !== null;
  if (!possible(first, second) && !possible(second, first)) return NO_SUCH_DAY;
  if (first === second) {
    return year === null ? undated(first, second) : plainDay(civilDay(year, first, second));
  }
  return { kind: "either-order", first, second, year };
}

/** Texts with a month's name, a week's number, or a part of a month. The text is in normal form. */
function readWords(normal: string): DayTextReading | null {
  const numbers: string[] = [];
  let month: number | null = null;
  let monthLeads = false;
  let third: 0 | 1 | 2 | null = null;
  let week = false;
  for (const word of splitWords(normal)) {
    const named = monthOfWord(word);
    if (/^\d+$/.test(word)) numbers.push(word);
    else if (named !== null && (month === null || monthLeads)) {
      // "mar" is March and Tuesday; with another month behind it, it was the weekday.
      monthLeads = month === null && numbers.length === 0;
      month = named;
    } else if (thirdOfWord(word) !== null) third = thirdOfWord(word);
    else if (isWeekWord(word)) week = true;
    else if (!isDateFiller(word)) return null;
  }
  if (month !== null && third !== null) return readThird(third, month, numbers);
  if (month !== null) return readNamedMonth(month, monthLeads, numbers);
  return week ? readWeek(numbers) : null;
}

// "3rd", "1er" and "sept2026" come apart at the change from digit to letter.
function splitWords(normal: string): string[] {
  return normal.match(/\d+|[^\d\s]+/g) ?? [];
}

function readNamedMonth(
  month: number,
  monthLeads: boolean,
  [first, second, ...more]: readonly string[],
): DayTextReading | null {
  if (more.length > 0) return null;
  if (first === undefined) {
    return { kind: "undated", inYear: (year) => middleOfMonth(year, month), orElse: null };
  }
  if (second === undefined) {
    if (first.length === 4) return span(middleOfMonth(Number(first), month));
    const day = Number(first);
    if (day < 1 || day > 31) {
      return first.length === 2 ? span(middleOfMonth(fullYear(first), month)) : NO_SUCH_DAY;
    }
    const year = monthLeads && first.length === 2 && day > 12 ? fullYear(first) : null;
    return {
      kind: "undated",
      inYear: (inYear) => civilDay(inYear, month, day),
      orElse: year === null ? null : middleOfMonth(year, month),
    };
  }
  return first.length === 4
    ? plainDay(civilDay(Number(first), month, Number(second)))
    : plainDay(civilDay(fullYear(second), month, Number(first)));
}

function readThird(
  third: 0 | 1 | 2,
  month: number,
  [year, ...more]: readonly string[],
): DayTextReading | null {
  if (more.length > 0) return null;
  const inYear = (one: number) =>
    third === 1 ? middleOfMonth(one, month) : civilDay(one, month, third === 0 ? 5 : 25);
  return year === undefined
    ? { kind: "undated", inYear, orElse: null }
    : span(inYear(fullYear(year)));
}

function readWeek([week, year, ...more]: readonly string[]): DayTextReading | null {
  if (week === undefined || more.length > 0 || week.length > 2) return null;
  const inYear = (one: number) => middleOfWeek(one, Number(week));
  return year === undefined
    ? { kind: "undated", inYear, orElse: null }
    : span(inYear(fullYear(year)));
}

function undated(month: number, day: number): UndatedDay {
  return { kind: "undated", inYear: (year) => civilDay(year, month, day), orElse: null };
}

/** A date of two numbers once their order is known. */
export function inOrder(
  { first, second, year }: Extract<DayTextReading, { kind: "either-order" }>,
  order: "day-first" | "month-first",
): CivilDay | UndatedDay | null {
  const [month, day] = order === "day-first" ? [second, first] : [first, second];
  if (year !== null) return civilDay(year, month, day);
  return civilDay(2024, month, day) === null ? null : undated(month, day);
}

function monthOrNull(year: number, month: number): CivilDay | null {
  return month >= 1 && month <= 12 ? middleOfMonth(year, month) : null;
}

function mondayOfWeek(year: number, week: number): CivilDay | null {
  if (week < 1 || week > 53) return null;
  const monday = mondayOf({ year, week });
  // Most years have 52 weeks: their 53rd is the next year's first.
  return isoWeek(monday).year === year ? monday : null;
}

function middleOfWeek(year: number, week: number): CivilDay | null {
  return daysLaterOrNull(mondayOfWeek(year, week), 3);
}

function daysLaterOrNull(day: CivilDay | null, days: number): CivilDay | null {
  return day === null ? null : daysLater(day, days);
}

function plainDay(day: CivilDay | null): DayTextReading {
  return day === null ? NO_SUCH_DAY : { kind: "day", day, isPlain: true };
}

/** The middle of a span, which is said. */
function span(day: CivilDay | null): DayTextReading {
  return day === null ? NO_SUCH_DAY : { kind: "day", day, isPlain: false };
}
