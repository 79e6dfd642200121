import { serialOfIso } from "../serial-day";
import type { LocaleMarks } from "./locale-marks";
import type { TypedNumber } from "./typed-number";

/** Two-digit years up to this one are of this century, others of the last. From memory, no source. */
const LATEST_SHORT_YEAR = 29;

/**
 * The day, time, or day and time that a person means who types this text, or null.
 *
 * @param text without blanks around it
 * @param year the year of a day that is typed without one
 * @returns the serial number and the number format that the cell gets
 * @example typedDay("1/2", localeMarks("en_GB"), 2026) // { value: serialOfIso("2026-02-01"), pattern: "dd/MM/yyyy" }
 */
export function typedDay(text: string, marks: LocaleMarks, year: number): TypedNumber | null {
  if (!/\d/.test(text) || text.length > 40) return null;
  const timeText = /(?:^|\s)(\d{1,4}:\d{2}(?::\d{2}(?:\.\d+)?)?(?:\s?[AaPp]\.?[Mm]\.?)?)$/.exec(
    text,
  );
  const time = timeText ? typedTime(timeText[1] as string) : null;
  if (timeText && time === null) return null;
  const dayText = timeText ? text.slice(0, timeText.index).trim() : text;
  if (dayText === "") return time === null ? null : { value: time.value, pattern: time.pattern };
  const day = plainDay(dayText, marks, year);
  if (day === null) return null;
  if (time === null) return day;
  if (time.value >= 1) return null;
  return { value: day.value + time.value, pattern: `${day.pattern} ${time.pattern}` };
}

function typedTime(text: string): TypedNumber | null {
  const parts = /^(\d+):(\d\d)(?::(\d\d(?:\.\d+)?))?(?:\s?([AaPp])\.?[Mm]\.?)?$/.exec(text);
  if (!parts) return null;
  const [, hours = "", minutes = "", seconds, half] = parts;
  let hour = Number(hours);
  if (Number(minutes) > 59 || Number(seconds ?? 0) >= 60) return null;
  if (half) {
    if (hour < 1 || hour > 12) return null;
    hour = (hour % 12) + (half.toLowerCase() === "p" ? 12 : 0);
  }
  const value = hour / 24 + Number(minutes) / 1440 + Number(seconds ?? 0) / 86_400;
  const long = seconds === undefined ? "h:mm" : "h:mm:ss";
  return { value, pattern: half ? `${long} AM/PM` : value >= 1 ? `[h]:mm:ss` : long };
}

function plainDay(text: string, marks: LocaleMarks, year: number): TypedNumber | null {
  // Year first means the same everywhere.
  const iso = /^(\d{4})([-/.])(\d{1,2})\2(\d{1,2})$/.exec(text);
  if (iso) {
    const pattern = iso[2] === "-" ? "yyyy-mm-dd" : marks.dayPattern;
    return dayCell({ year: Number(iso[1]), month: Number(iso[3]), day: Number(iso[4]), pattern });
  }
  return numberedDay(text, marks, year) ?? namedDay(text, marks, year);
}

function numberedDay(text: string, marks: LocaleMarks, thisYear: number): TypedNumber | null {
  const parts = /^(\d{1,2})([-/.])(\d{1,4})(?:\2(\d{4}|\d{1,2}))?$/.exec(text);
  if (!parts) return null;
  const [, first = "", separator, second = "", last] = parts;
  if (separator === "." && !marks.dots) return null;
  if (last === undefined) {
    if (second.length === 4)
      return dayCell({ year: Number(second), month: Number(first), day: 1, pattern: "M/yyyy" });
    if (second.length > 2) return null;
    const [month, day] = marks.order === "dmy" ? [second, first] : [first, second];
    return dayCell({
      year: thisYear,
      month: Number(month),
      day: Number(day),
      pattern: marks.dayPattern,
    });
  }
  if (second.length > 2) return null;
  const [year, month, day] =
    marks.order === "dmy"
      ? [last, second, first]
      : marks.order === "mdy"
        ? [last, first, second]
        : last.length === 4
          ? [last, first, second]
          : [first, second, last];
  return dayCell({
    year: fullYear(year),
    month: Number(month),
    day: Number(day),
    pattern: marks.dayPattern,
  });
}

function namedDay(text: string, marks: LocaleMarks, thisYear: number): TypedNumber | null {
  const words = text
    .toLowerCase()
    .replace(/[,.]/g, " ")
    .replace(/(\d)(?:st|nd|rd|th)\b/g, "$1")
    .split(/[\s\-/]+/)
    .filter((word) => word !== "" && word !== "de");
  if (words.length < 2 || words.length > 3) return null;
  const at = words.findIndex((word) => marks.months.has(word));
  if (at < 0 || at > 1) return null;
  const month = marks.months.get(words[at] as string) as number;
  const numbers = words.filter((_, index) => index !== at);
  if (!numbers.every((word) => /^(?:\d{1,2}|\d{4})$/.test(word))) return null;
  const [first = "", second] = numbers;
  if (second === undefined) {
    if (first.length === 4)
      return dayCell({ year: Number(first), month, day: 1, pattern: "mmm yyyy" });
    return dayCell({ year: thisYear, month, day: Number(first), pattern: "d mmm" });
  }
  if (first.length === 4) return null;
  return dayCell({ year: fullYear(second), month, day: Number(first), pattern: "d mmm yyyy" });
}

function fullYear(text: string): number {
  const year = Number(text);
  if (text.length > 2) return year;
  return year <= LATEST_SHORT_YEAR ? 2000 + year : 1900 + year;
}

function dayCell({
  year,
  month,
  day,
  pattern,
}: {
  readonly year: number;
  readonly month: number;
  readonly day: number;
  readonly pattern: string;
}): TypedNumber | null {
  const two = (value: number) => String(value).padStart(2, "0");
  const value = serialOfIso(`${String(year).padStart(4, "0")}-${two(month)}-${two(day)}`);
  return value === null ? null : { value, pattern };
}
