import { type CivilDay, MONTH_NAMES, yearMonthDay } from "../../core";

/** A cell of a column that is filled, and what it is read as. */
export interface Sample<Read> {
  /** From 1. */
  readonly row: number;
  /** As the cell holds it. */
  readonly value: unknown;
  readonly read: Read;
}

/** So many of the nearest cells tell how a column is written. */
const LOOKED_AT = 20;

/**
 * A day as the column's other cells write theirs; null where they hold days, and a day is written.
 *
 * @param row where it is written, from 1: the nearest cells count
 */
export function dayLike(
  samples: readonly Sample<CivilDay>[],
  row: number,
  day: CivilDay,
): string | null {
  const near = nearest(samples, row);
  const texts = near.filter((sample): sample is TextSample => typeof sample.value === "string");
  if (2 * texts.length <= near.length) return null;
  const isPadded = !texts.some(({ value }) => /(?<!\d)\d(?!\d)/.test(value));
  // In a column of many forms one with the whole year, which can't be misread.
  const whole = texts.filter(({ value, read }) => value.includes(String(yearMonthDay(read).year)));
  for (const { value, read } of [...whole, ...texts]) {
    const text = inPlaceOf(value, { known: read, wanted: day, isPadded });
    if (text !== null) return text;
  }
  return null;
}

type TextSample = Sample<CivilDay> & { readonly value: string };

/** A count as the column's other cells write theirs: as text where they are texts of digits. */
export function countLike(
  samples: readonly Sample<number>[],
  row: number,
  count: number,
): string | number {
  const near = nearest(samples, row);
  const texts = near.filter(({ value, read }) => value === String(read));
  return 2 * texts.length > near.length ? String(count) : count;
}

function nearest<Read>(samples: readonly Sample<Read>[], row: number): readonly Sample<Read>[] {
  return [...samples]
    .sort((a, b) => Math.abs(a.row - row) - Math.abs(b.row - row))
    .slice(0, LOOKED_AT);
}

/** The text of one day turned into that of another; null where it can't be told which part is which. */
function inPlaceOf(
  text: string,
  {
    known,
    wanted,
    isPadded,
  }: { readonly known: CivilDay; readonly wanted: CivilDay; readonly isPadded: boolean },
): string | null {
  const [from, to] = [yearMonthDay(known), yearMonthDay(wanted)];
  const parts = text.match(/\d+|\p{L}+|[^\d\p{L}]+/gu) ?? [];
  const numbersAt = parts.flatMap((part, at) => (/^\d+$/.test(part) ? [at] : []));
  const words = parts.flatMap((part, at) => (/^\p{L}+$/u.test(part) ? [at] : []));
  const yearAt = numbersAt.find((at) => isYear(parts[at] ?? "", from.year));
  const others = numbersAt.filter((at) => at !== yearAt);
  const turned = [...parts];
  if (yearAt === undefined) return null;
  turned[yearAt] = String(to.year).slice(-(parts[yearAt]?.length ?? 4));
  const put = (at: number, value: number) => {
    turned[at] = isPadded ? String(value).padStart(2, "0") : String(value);
  };
  const [first = -1, second = -1] = others;
  const [one, two] = [Number(parts[first]), Number(parts[second])];
  if (others.length === 2 && words.length === 0) {
    const [dayFirst, monthFirst] = [
      one === from.day && two === from.month,
      one === from.month && two === from.day,
    ];
    if (dayFirst === monthFirst) return null;
    put(first, dayFirst ? to.day : to.month);
    put(second, dayFirst ? to.month : to.day);
    return turned.join("");
  }
  const monthAt = words.find((at) => isMonth(parts[at] ?? "", from.month));
  if (others.length !== 1 || one !== from.day || monthAt === undefined || words.length > 1) {
    return null;
  }
  put(first, to.day);
  turned[monthAt] = monthLike(parts[monthAt] ?? "", to.month);
  return turned.join("");
}

function isYear(part: string, year: number): boolean {
  return part === String(year) || (part.length === 2 && Number(part) === year % 100 && year > 31);
}

/** An English month, whole or its first letters; those of other languages are left to be days. */
function isMonth(part: string, month: number): boolean {
  const name = MONTH_NAMES[month - 1] ?? "";
  return part.length >= 3 && name.startsWith(part.toLowerCase());
}

function monthLike(part: string, month: number): string {
  const name = MONTH_NAMES[month - 1] ?? "";
  const isShort = part.length === 3;
  const text = isShort ? name.slice(0, 3) : name;
  if (part === part.toUpperCase()) return text.toUpperCase();
  return part[0] === part[0]?.toUpperCase() ? `${text[0]?.toUpperCase()}${text.slice(1)}` : text;
}
