import { normalText } from "../words/normal-text";
import { type CivilDay, civilDay, daysInMonth, daysLater } from "./civil-day";
import { isoDay, sentenceDay } from "./day-text";
import { mondayOf } from "./iso-week";
import { isDateFiller, isWeekWord, monthOfWord, thirdOfWord } from "./month-words";

/** What a text says when a day is due in it. */
export type DayTextReading =
  | { readonly kind: "day"; readonly day: CivilDay; readonly readAs: string | null }
  /** Two numbers that could be day and month either way round; a side is null where it is no date. */
  | {
      readonly kind: "either-order";
      readonly dayFirst: CivilDay | null;
      readonly monthFirst: CivilDay | null;
    }
  | { readonly kind: "unread"; readonly why: string };

const UNREAD: DayTextReading = { kind: "unread", why: "not a date" };

/**
 * Reads a date as people type it: 2026-09-03, 3/9/26, 3-Sep-2026, "3 sept. 2026", "Sept 3",
 * "mid March 2026", "wk 12 2026", "3/2026"; a time of day behind it is dropped.
 *
 * A span (a month, a third of a month, a week) is read as its middle day and says so.
 * A date without a year takes the last such day up to `latest`, and says so.
 *
 * @param latest the day up to which undated years are looked for; null leaves such text unread
 */
export function readDayText(text: string, latest: CivilDay | null): DayTextReading {
  const plain = text.normalize("NFKC").trim();
  const withoutTime = plain.replace(
    /[T ,]+\d{1,2}[:h]\d{2}(?::\d{2})?(?:\.\d+)?\s*(?:[ap]\.?m\.?)?Z?$/i,
    "",
  );
  return (
    readIsoWeek(withoutTime) ??
    readYearFirst(withoutTime) ??
    readTwoOrThreeNumbers(withoutTime, latest) ??
    readWords(normalText(withoutTime), latest) ??
    UNREAD
  );
}

function readIsoWeek(text: string): DayTextReading | null {
  const match = /^(\d{4})-?W(\d{1,2})(?:-?([1-7]))?$/i.exec(text);
  if (!match) return null;
  const year = Number(match[1]);
  const week = Number(match[2]);
  if (match[3] === undefined) return middleOfWeek(year, week);
  return week >= 1 && week <= 53
    ? plainDay(daysLater(mondayOf({ year, week }), Number(match[3]) - 1))
    : UNREAD;
}

function readYearFirst(text: string): DayTextReading | null {
  const full =
    /^(\d{4})([-/. ])(\d{1,2})\2(\d{1,2})$/.exec(text) ?? /^(\d{4})()(\d{2})(\d{2})$/.exec(text);
  if (full) return dayOrUnread(civilDay(Number(full[1]), Number(full[3]), Number(full[4])));
  const month = /^(\d{4})[-/.](\d{1,2})$/.exec(text);
  return month ? middleOfMonth(Number(month[1]), Number(month[2])) : null;
}

function readTwoOrThreeNumbers(text: string, latest: CivilDay | null): DayTextReading | null {
  const three = /^(\d{1,2})\s*[-/. ]\s*(\d{1,2})\s*[-/. ]\s*(\d{4}|\d{2})$/.exec(text);
  if (three) {
    return eitherOrder(Number(three[1]), Number(three[2]), () => fullYear(three[3] as string));
  }
  const two = /^(\d{1,2})\s*[-/.]\s*(\d{4}|\d{1,2})\.?$/.exec(text);
  if (!two) return null;
  if ((two[2] as string).length === 4) return middleOfMonth(Number(two[2]), Number(two[1]));
  if (latest === null) return { kind: "unread", why: "a date without a year" };
  return eitherOrder(Number(two[1]), Number(two[2]), (month, day) =>
    lastYearWith(month, day, latest),
  );
}

function eitherOrder(
  first: number,
  second: number,
  yearFor: (month: number, day: number) => number,
): DayTextReading {
  const dayFirst = civilDay(yearFor(second, first), second, first);
  const monthFirst = civilDay(yearFor(first, second), first, second);
  if (dayFirst === null && monthFirst === null) return UNREAD;
  if (dayFirst === monthFirst) return dayOrUnread(dayFirst);
  return { kind: "either-order", dayFirst, monthFirst };
}

/** Texts with a month's name, a week's number, or a part of a month. The text is in normal form. */
function readWords(normal: string, latest: CivilDay | null): DayTextReading | null {
  if (normal.length > 60) return null;
  const numbers: string[] = [];
  let month: number | null = null;
  let third: 0 | 1 | 2 | null = null;
  let week = false;
  for (const word of splitWords(normal)) {
    const named = monthOfWord(word);
    if (/^\d+$/.test(word)) numbers.push(word);
    else if (named !== null && month === null) month = named;
    else if (isWeekWord(word)) week = true;
    else if (thirdOfWord(word) !== null) third = thirdOfWord(word);
    else if (!isDateFiller(word)) return null;
  }
  if (week && month === null) return readWeek(numbers, latest);
  if (month === null) return null;
  if (third !== null) return readThird(third, month, numbers, latest);
  return readNamedMonth(month, numbers, latest);
}

// "3rd", "1er" and "sept2026" come apart at the change from digit to letter.
function splitWords(normal: string): string[] {
  return normal.match(/\d+|[^\d\s]+/g) ?? [];
}

function readNamedMonth(month: number, numbers: readonly string[], latest: CivilDay | null) {
  const [first, second, ...more] = numbers;
  if (more.length > 0) return null;
  if (first === undefined) return spanWithoutYear(month, latest, middleOfMonth);
  if (second === undefined) {
    // "Agt 25" could be a day or a year; a day above 12 beside the month of a past year is rarer
    // than "Sept 3", so one number is a day where the calendar has it, unless four digits long.
    if (first.length === 4) return middleOfMonth(Number(first), month);
    if (latest === null) return { kind: "unread", why: "a date without a year" } as const;
    const day = Number(first);
    return readAs(civilDay(lastYearWith(month, day, latest), month, day));
  }
  return first.length === 4
    ? dayOrUnread(civilDay(Number(first), month, Number(second)))
    : dayOrUnread(civilDay(fullYear(second), month, Number(first)));
}

function readThird(
  third: 0 | 1 | 2,
  month: number,
  numbers: readonly string[],
  latest: CivilDay | null,
): DayTextReading | null {
  if (numbers.length > 1) return null;
  const middleOfThird = (year: number) =>
    readAs(
      third === 1
        ? civilDay(year, month, Math.ceil(daysInMonth(year, month) / 2))
        : civilDay(year, month, third === 0 ? 5 : 25),
    );
  const year = numbers[0];
  return year === undefined
    ? spanWithoutYear(month, latest, middleOfThird)
    : middleOfThird(fullYear(year));
}

function readWeek(numbers: readonly string[], latest: CivilDay | null): DayTextReading | null {
  const [week, year, ...more] = numbers;
  if (week === undefined || more.length > 0) return null;
  if (year !== undefined) return middleOfWeek(fullYear(year), Number(week));
  if (latest === null) return { kind: "unread", why: "a week without a year" };
  const thisYear = Number(isoDay(latest).slice(0, 4));
  const now = middleOfWeek(thisYear, Number(week));
  return now.kind === "day" && now.day > latest ? middleOfWeek(thisYear - 1, Number(week)) : now;
}

function spanWithoutYear(
  month: number,
  latest: CivilDay | null,
  middle: (year: number, month: number) => DayTextReading,
): DayTextReading {
  if (latest === null) return { kind: "unread", why: "a month without a year" };
  return middle(lastYearWith(month, 1, latest), month);
}

function middleOfMonth(year: number, month: number): DayTextReading {
  if (month < 1 || month > 12) return UNREAD;
  return readAs(civilDay(year, month, Math.ceil(daysInMonth(year, month) / 2)));
}

function middleOfWeek(year: number, week: number): DayTextReading {
  if (week < 1 || week > 53) return UNREAD;
  return readAs(daysLater(mondayOf({ year, week }), 3));
}

/** The latest year in which the day is not after `latest`. */
function lastYearWith(month: number, day: number, latest: CivilDay): number {
  const year = Number(isoDay(latest).slice(0, 4));
  const thisYear = civilDay(year, month, day);
  return thisYear !== null && thisYear > latest ? year - 1 : year;
}

/** Two digits are 1970 to 2069. */
function fullYear(text: string): number {
  const year = Number(text);
  if (text.length > 2) return year;
  return year < 70 ? 2000 + year : 1900 + year;
}

function plainDay(day: CivilDay): DayTextReading {
  return { kind: "day", day, readAs: null };
}

function dayOrUnread(day: CivilDay | null): DayTextReading {
  return day === null ? { kind: "unread", why: "no such day in the calendar" } : plainDay(day);
}

function readAs(day: CivilDay | null): DayTextReading {
  if (day === null) return { kind: "unread", why: "no such day in the calendar" };
  return { kind: "day", day, readAs: sentenceDay(day) };
}
