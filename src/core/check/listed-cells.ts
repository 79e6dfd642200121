import type { Records } from "../records";

/** Cells, as row and column, of which the reading of the table has something to say already. */
export function listedCells({ troubles }: Records): ReadonlySet<string> {
  return new Set(troubles.map(({ row, column }) => `${row} ${column}`));
}
