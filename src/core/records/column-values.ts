import { type Cell, cellText, type Grid, isBlank, readDayText } from "../cells";
import { normalText, wordSet } from "../words";
import type { TableArea } from "./find-tables";

/** What the first filled cells of a column hold. */
export interface ColumnValues {
  /** What most of them are; null where the column is blank. */
  readonly holds: "day" | "count" | "text" | null;
  /** Whether nearly all of them are. */
  readonly plainly: boolean;
  /** Whether any is a day of the sheet's own, not a text. */
  readonly ownDays: boolean;
  readonly filled: number;
  /** As they are written. */
  readonly texts: readonly string[];
  /** How many of them differ, capitals and accents aside. */
  different(): number;
  /** Row by row from the top the count, or the day as a whole number; null where there is none. */
  readonly numbers: readonly (number | null)[];
}

const CELLS_LOOKED_AT = 60;
/** Our choice: one odd cell of seven changes nothing. */
const PLAINLY = 0.85;
const NOTHING = wordSet((words) => [...words.nothing, ...words.notDone, ...words.ditto]);

/** Looks at the first filled cells of a column. */
export function columnValues(
  grid: Grid,
  column: number,
  { firstRow, endRow, repeats }: TableArea,
): ColumnValues {
  const tally = { day: 0, count: 0, text: 0 };
  const texts: string[] = [];
  const numbers: (number | null)[] = [];
  let ownDays = false;
  for (let row = firstRow; row < endRow && numbers.length < CELLS_LOOKED_AT; row += 1) {
    if (repeats.has(row)) continue;
    const cell = grid.at(row, column);
    const number = numberIn(cell);
    numbers.push(number);
    if (isBlank(cell) || typeof cell === "boolean") continue;
    ownDays ||= typeof cell === "object";
    const text = cellText(cell);
    texts.push(text);
    if (looksLikeDay(cell)) tally.day += 1;
    else if (looksLikeCount(cell)) tally.count += 1;
    else if (isSaid(normalText(text))) tally.text += 1;
  }
  const filled = tally.day + tally.count + tally.text;
  const holds = (["day", "count", "text"] as const).reduce((best, one) =>
    tally[one] > tally[best] ? one : best,
  );
  return {
    holds: filled === 0 ? null : holds,
    plainly: tally[holds] >= PLAINLY * filled,
    ownDays,
    filled,
    texts,
    different: () => new Set(texts.map(normalText)).size,
    numbers,
  };
}

function isSaid(text: string): boolean {
  return text !== "" && !NOTHING.has(text);
}

/** Whether the first filled cell of a column is a day or a number: mostly that settles it. */
export function beginsWith(
  grid: Grid,
  column: number,
  { firstRow, endRow }: TableArea,
): "day" | "count" | null {
  for (let row = firstRow; row < endRow; row += 1) {
    const cell = grid.at(row, column);
    if (isBlank(cell)) continue;
    if (looksLikeDay(cell)) return "day";
    return typeof cell === "number" ? "count" : null;
  }
  return null;
}

function looksLikeDay(cell: Cell): boolean {
  if (typeof cell === "object") return true;
  if (typeof cell === "number") return cell > 32000 && cell < 80000;
  const text = cellText(cell);
  return (!NUMBER.test(text) || DAY_IN_DIGITS.test(text)) && readDayText(text).kind !== "unread";
}

const NUMBER = /^[+-]?[\d.,]+$/;
/** "2.5.2026", "2026.05.02", "20260502": days that a number's marks and digits would cover too. */
const DAY_IN_DIGITS = /^(?:\d{1,2}\.\d{1,2}\.(?:\d{2}|\d{4})|\d{4}\.\d\d?\.\d\d?|(?:19|20)\d{6})$/;
/** "~300", "25 doz", "270 (12 weak)": a number and what little is said of it. */
const COUNT = /^[~≈<>±]?\s*(\d[\d.,' ]*)(?:\s+\p{L}[^\d]*|\s*\(.*\)|\s*[x×*%].*)?$/u;

/** About the number in a cell, to compare columns by; null where more is said of it ("20 x 54", "2 doz"). */
function numberIn(cell: Cell): number | null {
  if (typeof cell === "number") return cell;
  if (typeof cell === "object") return cell.day;
  const text = cellText(cell);
  return NUMBER.test(text) ? Number(text.replace(/\D/g, "")) : null;
}

function looksLikeCount(cell: Cell): boolean {
  return typeof cell === "number" || COUNT.test(cellText(cell).normalize("NFKC"));
}
