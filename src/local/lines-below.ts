import { shownText } from "./cell-text";
import type { SheetCell } from "./sheet-cells";

/** A column that is printed below its table, since it would make every line too long. */
export interface ColumnBelow {
  /** What stands above the lines. */
  readonly heading: string;
  readonly column: string;
  /** The column that says what a line is about. */
  readonly of: string;
}

/**
 * The texts of a column, each once with what it is about: in a table they would repeat on every line.
 * @param rows rows of cells, the header first
 * @returns lines such as "Grafting: ..."; none when the columns are not there
 */
export function linesBelow(
  rows: readonly (readonly (SheetCell | null)[])[],
  below: ColumnBelow,
): string[] {
  const header = rows[0]?.map(shownText) ?? [];
  const column = header.indexOf(below.column);
  const of = header.indexOf(below.of);
  if (column < 0 || of < 0) return [];
  const about = new Map<string, Set<string>>();
  for (const row of rows.slice(1)) {
    const text = shownText(row[column]);
    if (text === "") continue;
    about.set(text, (about.get(text) ?? new Set()).add(shownText(row[of])));
  }
  return Array.from(about, ([text, names]) => `${Array.from(names).join(", ")}: ${text}`);
}
