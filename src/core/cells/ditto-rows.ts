import { normalText, wordSet } from "../words";
import { type Cell, cellText, type Grid, isBlank } from "./cell";

/** Also two with a gap between, and strokes between dashes: " ", -//-. */
const SIGNS =
  /^[\s\-–—._]*(?:["“”„″〃«»]+|['’‘´`′]{1,2}|,,|\/\/)(?:\s*["“”„″〃'’´`′])?[\s\-–—._]*$/;
const WORDS = wordSet(({ ditto }) => ditto);
/** No longer text is looked up: names and notes are, by the ten thousand. */
const LONGEST = 24;

/**
 * Which row's value each ditto mark (", 〃, do., idem) of a column means, by the row of the mark. A word that
 * stands before any value is a name ("Sama"); a sign with nothing above stays.
 */
export function dittoRows(
  grid: Grid,
  column: number,
  rows: Iterable<number>,
): ReadonlyMap<number, number> {
  const meant = new Map<number, number>();
  const markOf = new Map<Cell, string | null>();
  const names = new Set<string>();
  let above: number | null = null;
  for (const row of rows) {
    const cell = grid.at(row, column);
    if (isBlank(cell)) continue;
    let mark = markOf.get(cell);
    if (mark === undefined) {
      mark = dittoMark(cell);
      markOf.set(cell, mark);
    }
    if (mark === null || names.has(mark)) above = row;
    else if (above !== null) meant.set(row, above);
    else if (mark !== "") names.add(mark);
  }
  return meant;
}

/** The word of a ditto mark, "" of a sign; null of any other cell. */
function dittoMark(cell: Cell): string | null {
  if (typeof cell !== "string" || cell.length > LONGEST) return null;
  const text = cellText(cell);
  if (SIGNS.test(text)) return "";
  const word = normalText(text);
  return WORDS.has(word) ? word : null;
}

/** The grid with the values that are meant in place of ditto marks. @param rowsOf by column, the rows of dittoRows */
export function asMeant(
  grid: Grid,
  rowsOf: ReadonlyMap<number, ReadonlyMap<number, number>>,
): Grid {
  const { rowCount, columnCount } = grid;
  const at = (row: number, column: number) => grid.at(rowsOf.get(column)?.get(row) ?? row, column);
  return { rowCount, columnCount, at };
}
