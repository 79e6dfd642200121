import type { Grid } from "../cells";
import { normalText } from "../words";
import { HEADER_ROWS } from "./headed-table";

/**
 * A small table with the headers that a person told of under our names, as it is read then.
 *
 * @param told our column name by the header in normal form; undefined where nothing was told of it
 */
export function withOurHeaders(grid: Grid, told: ReadonlyMap<string, string> | undefined): Grid {
  if (told === undefined) return grid;
  return {
    rowCount: grid.rowCount,
    columnCount: grid.columnCount,
    at: (row, column) => {
      const cell = grid.at(row, column);
      if (row >= HEADER_ROWS || typeof cell !== "string") return cell;
      return told.get(normalText(cell)) ?? cell;
    },
  };
}
