import { cellText, type Grid } from "../cells/cell";
import type { HeaderWords } from "./header-words";
import { targetKey } from "./header-words";

const ROWS_SEARCHED = 10;

/**
 * The header row among the first ten: the one whose cells name the most different things, two at
 * least, one of them a batch or a step.
 *
 * @returns from 0; null when no row is a header
 */
export function findHeader(grid: Grid, words: HeaderWords): number | null {
  let best: number | null = null;
  let most = 1;
  for (let row = 0; row < Math.min(ROWS_SEARCHED, grid.rowCount); row += 1) {
    const named = namedIn(grid, row, words);
    const telling = [...named].some((key) => key.startsWith("step") || key === "fact batch");
    if (telling && named.size > most) {
      best = row;
      most = named.size;
    }
  }
  return best;
}

function namedIn(grid: Grid, row: number, words: HeaderWords): Set<string> {
  const named = new Set<string>();
  for (let column = 0; column < grid.columnCount; column += 1) {
    const cell = grid.at(row, column);
    if (typeof cell !== "string") continue;
    const best = words.understand(cellText(cell))[0];
    if (best !== undefined) named.add(targetKey(best.target));
  }
  return named;
}

/** The headers of a row as they stand in the sheet. */
export function headersOf(grid: Grid, row: number): string[] {
  const headers: string[] = [];
  for (let column = 0; column < grid.columnCount; column += 1) {
    headers.push(cellText(grid.at(row, column)));
  }
  return headers;
}
