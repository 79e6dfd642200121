import { type Cell, cellText, type Grid, isBlank } from "../cells";
import { normalText, wordSet } from "../words";
import { TEXT_FACTS } from "./batch";
import type { ColumnMatch } from "./column-match";
import type { TableArea } from "./find-tables";
import type { MatchedTable } from "./match-columns";
import type { Trouble } from "./trouble";

/** Also two with a gap between, and strokes between dashes: " ", -//-. */
const SIGNS =
  /^[\s\-–—._]*(?:["“”„″〃«»]+|['’‘´`′]{1,2}|,,|\/\/)(?:\s*["“”„″〃'’´`′])?[\s\-–—._]*$/;
const WORDS = wordSet(({ ditto }) => ditto);
/** No longer text is looked up: names and notes are, by the ten thousand. */
const LONGEST = 16;

/**
 * The grid with the value above in place of each ditto mark (", 〃, do., idem) in a column of names,
 * and how many in which column, said once a column. A word in a table's first row is a name ("Sama");
 * a sign with nothing above stays.
 */
export function withoutDittos(
  grid: Grid,
  tables: readonly MatchedTable[],
): { readonly grid: Grid; readonly troubles: readonly Trouble[] } {
  const troubles: Trouble[] = [];
  /** By row and column, the row that is meant. */
  const rowMeant = new Map<number, number>();
  const place = (row: number, column: number) => row * grid.columnCount + column;
  for (const { area, kind, matches } of tables) {
    for (const match of matches) {
      if (!holdsNames(match, kind === "log")) continue;
      const meant = meantRows(grid, area, match.column);
      for (const [row, above] of meant) rowMeant.set(place(row, match.column), above);
      if (meant.size > 0) troubles.push(readAsAbove(match, meant.size));
    }
  }
  if (rowMeant.size === 0) return { grid, troubles };
  const { rowCount, columnCount } = grid;
  const at = (row: number, column: number) =>
    grid.at(rowMeant.get(place(row, column)) ?? row, column);
  return { grid: { rowCount, columnCount, at }, troubles };
}

function holdsNames({ target, header }: ColumnMatch, isLog: boolean): boolean {
  if (target === null) return header !== "";
  if (target.kind === "event") return target.fact === "eventPerson" || target.fact === "eventStep";
  if (target.kind === "step") return false;
  return TEXT_FACTS.some((fact) => fact === target.fact) || (isLog && target.fact === "batch");
}

function meantRows(grid: Grid, area: TableArea, column: number): ReadonlyMap<number, number> {
  const meant = new Map<number, number>();
  const markOf = new Map<Cell, string | null>();
  const names = new Set<string>();
  let above: number | null = null;
  for (let row = area.firstRow; row < area.endRow; row += 1) {
    const cell = grid.at(row, column);
    if (area.repeats.has(row) || isBlank(cell)) continue;
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

function readAsAbove({ header }: ColumnMatch, marks: number): Trouble {
  return { row: null, column: header, found: "", code: "ditto-marks", marks };
}
