import { rowsNamed } from "../../src/checks/records/reading";

/** The rows that an entry of BATCH_CHECK is about. */
export function rowsOfEntry(cells: readonly unknown[]): readonly unknown[] {
  const several = rowsNamed(cells[cells.length - 1]);
  return several.length === 0 ? [cells[0]] : several;
}
