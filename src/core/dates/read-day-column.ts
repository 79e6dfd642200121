import { type Cell, cellText, isBlank } from "../cells/cell";
import { errorShown } from "../cells/upstream";
import type { CivilDay } from "./civil-day";
import { sentenceDay } from "./day-text";
import { type DayTextReading, readDayText } from "./read-day-text";
import { dayOfSerial } from "./serial";

/** Which of day and month comes first in dates of two numbers. */
export type DayOrder = "day-first" | "month-first";

/** What a cell of a day column says. */
export type DayReading =
  | { readonly kind: "blank" }
  | { readonly kind: "day"; readonly day: CivilDay; readonly readAs: string | null }
  | { readonly kind: "unread"; readonly why: string };

export interface DayColumnHabits {
  /** The order that the workbook's locale writes; null when not known. */
  readonly localeOrder: DayOrder | null;
  /** The day the answer is asked for; null when the question has none. */
  readonly asOf: CivilDay | null;
}

const BLANK: DayReading = { kind: "blank" };
const SERIAL_RANGE_DAYS = 20 * 366;
/** 1990-01-01 to 2099-12-31, for questions that have no as-of day. */
const SERIALS_OF_OUR_TIME = { from: 32874, to: 73050 };

/**
 * A reader for one column of days. The order of day and month is settled by the column's own
 * dates (a first number above 12 can't be a month), else by the workbook's locale, else a date
 * that could be read both ways is left unread.
 *
 * @param cells gives every cell of the column; looked through for evidence once a date needs it
 */
export function dayColumnReader(
  cells: () => Iterable<Cell>,
  habits: DayColumnHabits,
): (cell: Cell) => DayReading {
  const seen = new Map<string, DayTextReading>();
  const readText = (text: string): DayTextReading => {
    let reading = seen.get(text);
    if (reading === undefined) {
      reading = readDayText(text, habits.asOf);
      seen.set(text, reading);
    }
    return reading;
  };
  let order: DayOrder | null | undefined;
  const settledOrder = (): DayOrder | null => {
    if (order === undefined) {
      const shown = orderShown(cells(), readText);
      order = shown === "none" ? habits.localeOrder : shown === "mixed" ? null : shown;
    }
    return order;
  };
  return (cell) => {
    if (typeof cell === "object") return { kind: "day", day: cell.day, readAs: null };
    if (typeof cell === "number") return readSerial(cell, habits.asOf);
    if (typeof cell === "boolean") return { kind: "unread", why: "a tick box, not a date" };
    if (isBlank(cell)) return BLANK;
    const error = errorShown(cell);
    if (error !== null) return { kind: "unread", why: `the cell shows ${error}` };
    const reading = readText(cellText(cell));
    return reading.kind === "either-order" ? settle(reading, settledOrder()) : reading;
  };
}

/** The order that the dates themselves give away. */
function orderShown(
  cells: Iterable<Cell>,
  readText: (text: string) => DayTextReading,
): DayOrder | "none" | "mixed" {
  let dayFirst = 0;
  let monthFirst = 0;
  for (const cell of cells) {
    if (typeof cell !== "string" || cell === "") continue;
    const reading = readText(cellText(cell));
    if (reading.kind !== "either-order") continue;
    if (reading.monthFirst === null) dayFirst += 1;
    else if (reading.dayFirst === null) monthFirst += 1;
  }
  if (dayFirst > 0 && monthFirst > 0) return "mixed";
  if (dayFirst > 0) return "day-first";
  return monthFirst > 0 ? "month-first" : "none";
}

function settle(
  { dayFirst, monthFirst }: Extract<DayTextReading, { kind: "either-order" }>,
  order: DayOrder | null,
): DayReading {
  if (dayFirst === null || monthFirst === null) {
    const only = dayFirst ?? monthFirst;
    if (only === null) return { kind: "unread", why: "not a date" };
    const expected = order === null || (order === "day-first") === (dayFirst !== null);
    return { kind: "day", day: only, readAs: expected ? null : sentenceDay(only) };
  }
  if (order === null) {
    return {
      kind: "unread",
      why: `either ${sentenceDay(dayFirst)} or ${sentenceDay(monthFirst)}`,
    };
  }
  return { kind: "day", day: order === "day-first" ? dayFirst : monthFirst, readAs: null };
}

function readSerial(serial: number, asOf: CivilDay | null): DayReading {
  const day = dayOfSerial(serial);
  const plausible =
    asOf === null
      ? serial >= SERIALS_OF_OUR_TIME.from && serial <= SERIALS_OF_OUR_TIME.to
      : Math.abs(day - asOf) <= SERIAL_RANGE_DAYS;
  return plausible
    ? { kind: "day", day, readAs: null }
    : { kind: "unread", why: "a number, not a date" };
}
