import { type CivilDay, dayOfSerial } from "../dates";
import { type Cell, cellText, isBlank } from "./cell";
import { type DayTextReading, inOrder, readDayText, type UndatedDay } from "./read-day-text";
import type { Unread } from "./unread";
import { errorShown } from "./upstream";

/** Which of day and month comes first in dates of two numbers. */
export type DayOrder = "day-first" | "month-first";

/** What a cell of a day column says. */
export type DayReading =
  | { readonly kind: "blank" }
  | { readonly kind: "day"; readonly day: CivilDay; readonly isPlain: boolean }
  | UndatedDay
  | { readonly kind: "unread"; readonly why: Unread };

/** What the dates of a column give away of their order. */
export type OrderShown = DayOrder | "none" | "mixed";

export interface DayColumnHabits {
  /** The order that other columns of the table or the workbook's locale write; null when not known. */
  readonly usualOrder: () => DayOrder | null;
  /** The day the answer is asked for; null when the question has none. */
  readonly asOf: CivilDay | null;
}

/** Reads the cells of one column of days. */
export interface DayColumnReader {
  read(cell: Cell): DayReading;
  /** Looks through the column for dates that can be read one way only. */
  orderShown(): OrderShown;
}

const BLANK: DayReading = { kind: "blank" };
const SERIAL_RANGE_DAYS = 20 * 366;
/** 1990-01-01 to 2099-12-31, for questions that have no as-of day. */
const SERIALS_OF_OUR_TIME = { from: 32874, to: 73050 };

/**
 * A reader for one column of days. The order of day and month is settled by the column's own
 * dates (a first number above 12 can't be a month), else by the usual order, else a date that
 * could be read both ways is left unread; so it is where the column's own dates contradict each
 * other.
 *
 * @param cells gives every cell of the column; looked through for evidence once a date needs it
 */
export function dayColumnReader(
  cells: () => Iterable<Cell>,
  { usualOrder, asOf }: DayColumnHabits,
): DayColumnReader {
  const seen = new Map<string, DayTextReading>();
  const readText = (text: string): DayTextReading => {
    let reading = seen.get(text);
    if (reading === undefined) {
      reading = readDayText(text);
      seen.set(text, reading);
    }
    return reading;
  };
  let shown: OrderShown | undefined;
  const orderShown = (): OrderShown => {
    shown ??= evidence(cells(), readText);
    return shown;
  };
  return {
    orderShown,
    read: (cell) => {
      if (typeof cell === "object") return { kind: "day", day: cell.day, isPlain: true };
      if (typeof cell === "number") return readSerial(cell, asOf);
      if (typeof cell === "boolean") return { kind: "unread", why: { code: "tick-box-for-day" } };
      if (isBlank(cell)) return BLANK;
      const error = errorShown(cell);
      if (error !== null) return { kind: "unread", why: { code: "cell-shows", shown: error } };
      const reading = readText(cellText(cell));
      if (reading.kind !== "either-order") return reading;
      const own = orderShown();
      return settle(reading, own === "none" ? usualOrder() : own === "mixed" ? null : own);
    },
  };
}

function evidence(cells: Iterable<Cell>, readText: (text: string) => DayTextReading): OrderShown {
  let dayFirst = 0;
  let monthFirst = 0;
  for (const cell of cells) {
    if (typeof cell !== "string" || cell === "") continue;
    const reading = readText(cellText(cell));
    if (reading.kind !== "either-order") continue;
    if (reading.first > 12) dayFirst += 1;
    else if (reading.second > 12) monthFirst += 1;
  }
  if (dayFirst > 0 && monthFirst > 0) return "mixed";
  if (dayFirst > 0) return "day-first";
  return monthFirst > 0 ? "month-first" : "none";
}

function settle(
  reading: Extract<DayTextReading, { kind: "either-order" }>,
  order: DayOrder | null,
): DayReading {
  const ways = [inOrder(reading, "day-first"), inOrder(reading, "month-first")] as const;
  const possible = ways.filter((way) => way !== null);
  if (order !== null) {
    const way = ways[order === "day-first" ? 0 : 1];
    if (way !== null) return typeof way === "number" ? day(way) : way;
  }
  const [first, second] = possible;
  if (first === undefined) return { kind: "unread", why: { code: "no-such-day" } };
  if (second === undefined) {
    if (typeof first !== "number") return first;
    return { kind: "day", day: first, isPlain: order === null };
  }
  const isDated = typeof first === "number" && typeof second === "number";
  return {
    kind: "unread",
    why: isDated ? { code: "either-day", days: [first, second] } : { code: "day-or-month-first" },
  };
}

function day(settled: CivilDay): DayReading {
  return { kind: "day", day: settled, isPlain: true };
}

function readSerial(serial: number, asOf: CivilDay | null): DayReading {
  const read = dayOfSerial(serial);
  const plausible =
    asOf === null
      ? serial >= SERIALS_OF_OUR_TIME.from && serial <= SERIALS_OF_OUR_TIME.to
      : Math.abs(read - asOf) <= SERIAL_RANGE_DAYS;
  return plausible ? day(read) : { kind: "unread", why: { code: "number-for-day" } };
}
