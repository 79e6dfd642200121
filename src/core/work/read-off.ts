import {
  type Cell,
  cellText,
  type DayOrder,
  dayColumnReader,
  isBlank,
  settleYear,
  shortened,
} from "../cells";
import { type CivilDay, civilDay, daysInMonth, yearMonthDay } from "../dates";
import { lazily } from "../lazily";
import type { RowFault } from "../tables";
import { everyWord, type LanguageWords, withoutAccents, wordPattern } from "../words";
import type { TimeOff } from "./crew";
import { type Week, weekOff } from "./read-week";

/** When somebody is off, as one cell says it. */
export interface OffRead {
  readonly stretches: readonly TimeOff[];
  /** What is left of the days of the week; null where none are named. */
  readonly week: Week | null;
}

/** A cell may hold 50,000 letters, and each piece is looked at in many ways. */
const LONGEST = 500;

const phrases = (pick: (words: LanguageWords) => readonly string[]) =>
  new RegExp(
    `[\\s(,]*(?<![\\p{L}\\p{N}])(?:${wordPattern(pick).replace(/ /g, "[\\s.-]+")})(?![\\p{L}\\p{N}])[.)]*`,
    "iu",
  );

const half = lazily(() =>
  phrases(({ workDays }) => [...workDays.half, ...workDays.morning, ...workDays.afternoon]),
);
const and = lazily(() => phrases((words) => words.and));
const before = lazily(
  () =>
    new RegExp(
      `^(?:${wordPattern(({ from, workDays }) => [...from, ...workDays.filler])})\\s+`,
      "i",
    ),
);
/** Where a stretch may have its middle: a dash, or a word such as "to". */
const middles = lazily(() => {
  const words = everyWord(({ upTo, workDays }) => [...upTo, ...workDays.upTo]);
  const pattern = [...new Set(words)].map((word) => word.replace(/ /g, "[\\s./]+")).join("|");
  return new RegExp(`\\s*[-‐-―−~]\\s*|\\s+(?:${pattern})\\s+`, "giu");
});

/**
 * A reader of cells that say when somebody is off: days and stretches of them, several in one cell, half
 * days, or days of the week.
 *
 * @param cells every such cell of the table, by which dates of two numbers are told apart
 */
export function offReader(
  cells: () => readonly Cell[],
  { asOf, localeOrder }: { readonly asOf: CivilDay; readonly localeOrder: DayOrder | null },
): (cell: Cell) => OffRead | RowFault {
  // Dates of two numbers within a cell tell of the order as well.
  const all = () => cells().flatMap((cell) => [cell, ...String(cell).split(/[^\d/.]+/)]);
  const reader = dayColumnReader(all, { usualOrder: () => localeOrder, asOf });
  const dayIn = (cell: Cell): CivilDay | null => {
    const reading = reader.read(cell);
    if (reading.kind === "day") return reading.isPlain ? reading.day : null;
    if (reading.kind !== "undated" || typeof cell !== "string" || !/\d/.test(cell)) return null;
    return settleYear(reading, { neighbours: [asOf], sectionYear: null, asOf });
  };
  const stretchIn = (piece: Cell): TimeOff | RowFault | null => {
    const { text, isHalf } = halfIn(piece);
    const stretch = (from: CivilDay, to: CivilDay): TimeOff | RowFault =>
      to < from ? { code: "ends-before-it-begins" } : { from, to, ...(isHalf && { isHalf }) };
    const one = dayIn(text);
    if (one !== null && !isPlainStretch(text)) return stretch(one, one);
    for (const [first, last] of endsIn(text)) {
      const [from, to] = [dayIn(first), dayIn(last)];
      const begin = from ?? (to === null ? null : inMonthOf(first, to));
      const end = to ?? (from === null ? null : inMonthOf(last, from));
      if (begin !== null && end !== null) return stretch(begin, end);
    }
    return one === null ? null : stretch(one, one);
  };
  const stretchesIn = (pieces: readonly Cell[]): readonly TimeOff[] | RowFault | null => {
    const stretches: TimeOff[] = [];
    for (const piece of pieces) {
      const read = stretchIn(piece);
      if (read === null || "code" in read) return read;
      stretches.push(read);
    }
    return stretches;
  };
  return (cell) => {
    const found = shortened(cellText(cell));
    if (typeof cell === "string" && cell.length > LONGEST) return { code: "not-a-day", found };
    const week = typeof cell === "string" ? weekOff(cell) : null;
    if (week !== null) return { stretches: [], week };
    // A comma may stand in a date, so it parts what can't be read otherwise.
    const read =
      stretchesIn([cell]) ??
      stretchesIn(piecesOf(cell, /[;\n]/)) ??
      stretchesIn(piecesOf(cell, /[;,\n]/)) ??
      ({ code: "not-a-day", found } as const);
    return "code" in read ? read : { stretches: read, week: null };
  };
}

/**
 * When somebody is off, by a cell that says when it begins, or all of it, and one that says when it ends.
 *
 * @param openEnd whether a first day alone has no end; else it is one day
 */
export function offBetween(
  read: ReturnType<typeof offReader>,
  [first, last]: readonly [Cell, Cell],
  openEnd: boolean,
): OffRead | RowFault {
  const [begin, end] = [first, last].map((cell) => (isBlank(cell) ? NEVER : read(cell))) as [
    OffRead | RowFault,
    OffRead | RowFault,
  ];
  if ("code" in begin) return begin;
  if ("code" in end) return end;
  const [from, to] = [begin, end].map(oneDay) as [CivilDay | null, CivilDay | null];
  if (isBlank(last)) {
    return openEnd && from !== null ? { stretches: [{ from, to: null }], week: null } : begin;
  }
  const unread = to === null ? last : from === null && !isBlank(first) ? first : null;
  if (unread !== null) return { code: "not-a-day", found: shortened(cellText(unread)) };
  if (from !== null && (to as CivilDay) < from) return { code: "ends-before-it-begins" };
  return { stretches: [{ from, to }], week: null };
}

const NEVER: OffRead = { stretches: [], week: null };

/** The whole day that a cell says; null for anything else. */
function oneDay({ stretches: [first, ...more] }: OffRead): CivilDay | null {
  const isOne = more.length === 0 && first?.from === first?.to && !first?.isHalf;
  return isOne ? (first?.from ?? null) : null;
}

/** What stands between signs, and between words such as "and". */
function piecesOf(cell: Cell, signs: RegExp): readonly string[] {
  if (typeof cell !== "string" || cell.length > LONGEST) return [];
  return cell
    .split(signs)
    .flatMap((piece) => piece.split(and()))
    .map((piece) => piece.trim())
    .filter((piece) => piece !== "");
}

/** The text without a word for a half day, and whether there was one. */
function halfIn(piece: Cell): { readonly text: Cell; readonly isHalf: boolean } {
  if (typeof piece !== "string") return { text: piece, isHalf: false };
  const plain = withoutAccents(piece).trim();
  const text = plain.replace(half(), " ").trim();
  return { text: text.replace(before(), ""), isHalf: text !== plain };
}

/** Both ends of a stretch, in each way in which the text can be parted. */
function endsIn(cell: Cell): readonly (readonly [string, string])[] {
  if (typeof cell !== "string") return [];
  return [...cell.matchAll(middles())].map(({ index, 0: middle }) => [
    cell.slice(0, index).trim(),
    cell.slice(index + middle.length).trim(),
  ]);
}

/** "1–3 Dec", "Dec 1-3", "1 Dec to 3 Dec": a stretch, though it could be a date of its numbers. */
function isPlainStretch(cell: Cell): boolean {
  if (typeof cell !== "string") return false;
  const isOfNumbers = /^\d{1,2}\s*-\s*\d{1,2}\s+\p{L}|^\p{L}+\.?\s+\d{1,2}\s*-\s*\d{1,2}$/u;
  return isOfNumbers.test(cell) || [...cell.matchAll(middles())].some(([middle]) => middle !== "-");
}

/** "1" in "1–3 Dec": a day of the month in which the other end is. */
function inMonthOf(text: string, last: CivilDay): CivilDay | null {
  const [, digits] = /^(\d{1,2})[\s.]*\p{L}{0,2}$/u.exec(text) ?? [];
  const { year, month } = yearMonthDay(last);
  const day = Number(digits);
  return digits === undefined || day < 1 || day > daysInMonth(year, month)
    ? null
    : civilDay(year, month, day);
}
