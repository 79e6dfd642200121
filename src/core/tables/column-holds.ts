import { type Cell, cellText, type Grid, isBlank, readDayText } from "../cells";

/** What most of a column's cells are, `serial` numbers that rise by one; "blank" where there are none. */
export type Holds = "day" | "count" | "serial" | "text" | "blank";

const CELLS_LOOKED_AT = 40;
/** Our choice: a third may be something else, such as "soon" among days. */
const MOSTLY = 2 / 3;

/** What stands in a column below its header; "text" where no kind holds mostly. */
export function columnHolds(grid: Grid, column: number, rows: readonly number[]): Holds {
  const cells = rows
    .map((row) => grid.at(row, column))
    .filter((cell) => cell !== false && !isBlank(cell))
    .slice(0, CELLS_LOOKED_AT);
  if (cells.length === 0) return "blank";
  const mostly = (is: (cell: Cell) => boolean) => cells.filter(is).length >= MOSTLY * cells.length;
  if (mostly(isDay)) return "day";
  if (!mostly(isCount)) return "text";
  return cells.length >= SHORTEST_SERIES && cells.every(risesByOne) ? "serial" : "count";
}

const SHORTEST_SERIES = 3;

function risesByOne(cell: Cell, at: number, cells: readonly Cell[]): boolean {
  return at === 0 || Number(cell) === Number(cells[at - 1]) + 1;
}

/** Whether no cell of a column says the same as another. */
export function allDiffer(grid: Grid, column: number, rows: readonly number[]): boolean {
  const texts = rows.map((row) => cellText(grid.at(row, column))).filter((text) => text !== "");
  return new Set(texts).size === texts.length;
}

/** "1,200", "~300", "0,35", "R$ 4.50", "8 h": a number with a little beside it; "C-21" is a name. */
const COUNT = /^(?:\p{L}{0,3}[$€£]|Rp\.?)?[^\p{L}\d]*\d[\d.,' ]*(?:[^\d]{0,12})$/u;
const NUMBER = /^[+-]?\d+(?:[.,]\d+)?$/;
/** "2.5.2026" and "20260502" are no numbers. */
const DAY_IN_DIGITS = /^(?:\d{1,2}\.\d{1,2}\.(?:\d{2}|\d{4})|(?:19|20)\d{6})$/;

function isDay(cell: Cell): boolean {
  if (typeof cell !== "string") return typeof cell === "object";
  const text = cellText(cell);
  return (!NUMBER.test(text) || DAY_IN_DIGITS.test(text)) && readDayText(text).kind !== "unread";
}

function isCount(cell: Cell): boolean {
  return typeof cell === "number" || (typeof cell === "string" && COUNT.test(cellText(cell)));
}
