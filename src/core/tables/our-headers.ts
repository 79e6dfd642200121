import type { Grid } from "../cells";
import { lazily } from "../lazily";
import { normalText } from "../words";
import { HEADER_ROWS } from "./headed-table";

/**
 * A small table with the headers that a person told of under our names, as it is read then. Of the first
 * rows the one with most of them is its header.
 *
 * @param told our column name by the header in normal form; "" for one that is to be left alone
 */
export function withOurHeaders(grid: Grid, told: ReadonlyMap<string, string> | undefined): Grid {
  if (told === undefined || told.size === 0) return grid;
  const headerRow = lazily(() => toldRow(grid, told));
  return {
    rowCount: grid.rowCount,
    columnCount: grid.columnCount,
    at: (row, column) => {
      const cell = grid.at(row, column);
      if (typeof cell !== "string" || row !== headerRow()) return cell;
      return told.get(normalText(cell)) ?? cell;
    },
  };
}

function toldRow(grid: Grid, told: ReadonlyMap<string, string>): number {
  let best = { row: -1, found: 0 };
  for (let row = 0; row < Math.min(HEADER_ROWS, grid.rowCount); row += 1) {
    let found = 0;
    for (let column = 0; column < grid.columnCount; column += 1) {
      const cell = grid.at(row, column);
      if (typeof cell === "string" && told.has(normalText(cell))) found += 1;
    }
    if (found > best.found) best = { row, found };
  }
  return best.row;
}
