import { type Cell, cellText, type Grid, isBlank } from "../cells";
import { normalText, wordSet } from "../words";
import { besideName } from "./beside-fields";

/** A small table whose header names its columns in known words, in any order, below title lines. */
export interface HeadedTable<Field extends string> {
  /** Row of the header, from 0. */
  readonly headerRow: number;
  readonly columnOf: Readonly<Partial<Record<Field, number>>>;
  /** Rows below the header that hold anything, from 0. */
  readonly rows: readonly number[];
  /** The cell of a field in a row; blank where the table lacks the column. */
  cell(row: number, field: Field): Cell;
}

/** A header stands among the first rows. */
export const HEADER_ROWS = 10;

/**
 * Finds the header among the first ten rows: the row with the most known words, if it has all
 * that are asked for.
 *
 * @param words    normal-form headers by field
 * @param required fields without which a row is no header
 * @returns null when no row is a header
 */
export function headedTable<Field extends string>(
  grid: Grid,
  words: Readonly<Record<Field, readonly string[]>>,
  required: readonly NoInfer<Field>[],
): HeadedTable<Field> | null {
  let best: { row: number; columnOf: Partial<Record<Field, number>>; found: number } | null = null;
  for (let row = 0; row < Math.min(HEADER_ROWS, grid.rowCount); row += 1) {
    const columnOf = knownColumns(grid, row, words);
    const found = Object.keys(columnOf).length;
    if (required.every((field) => columnOf[field] !== undefined) && found > (best?.found ?? 0)) {
      best = { row, columnOf, found };
    }
  }
  if (best === null) return null;
  return tableAt(grid, best.row, best.columnOf);
}

/** The table below a header of which it is known where its columns stand. */
export function tableAt<Field extends string>(
  grid: Grid,
  headerRow: number,
  columnOf: Readonly<Partial<Record<Field, number>>>,
): HeadedTable<Field> {
  return {
    headerRow,
    columnOf,
    rows: filledRows(grid, headerRow + 1),
    cell: (row, field) => {
      const column = columnOf[field];
      return column === undefined ? "" : grid.at(row, column);
    },
  };
}

/** Columns of a row whose headers are known, by field. */
export function knownColumns<Field extends string>(
  grid: Grid,
  row: number,
  words: Readonly<Record<Field, readonly string[]>>,
): Partial<Record<Field, number>> {
  const columnOf: Partial<Record<Field, number>> = {};
  const headers: string[] = [];
  for (let column = 0; column < grid.columnCount; column += 1) {
    headers.push(normalText(cellText(grid.at(row, column))));
  }
  // Our own names first, whichever column stands further left: a person may have told them.
  for (const field of Object.keys(words) as Field[]) {
    const ours = normalText(besideName(field));
    const column = headers.indexOf(ours);
    if (column !== -1 && words[field].includes(ours)) columnOf[field] = column;
  }
  const named = new Set(Object.values(columnOf));
  for (const [column, header] of headers.entries()) {
    if (named.has(column)) continue;
    if (header === "") continue;
    const isFree = (field: Field) => columnOf[field] === undefined;
    const field = fieldOf(header, words, isFree) ?? fieldOf(bare(header), words, isFree);
    if (field !== undefined) columnOf[field] = column;
  }
  return columnOf;
}

function fieldOf<Field extends string>(
  header: string,
  words: Readonly<Record<Field, readonly string[]>>,
  isFree: (field: Field) => boolean,
): Field | undefined {
  return (Object.keys(words) as Field[]).find(
    (field) => isFree(field) && words[field].includes(header),
  );
}

const ASIDE = wordSet(({ dayWords, countWords, headerFillers }) => [
  ...dayWords,
  ...countWords,
  ...headerFillers,
]);

/** A header without "no.", "date", "of the": "Cant. pedida" is "pedida". */
function bare(header: string): string {
  return header
    .split(" ")
    .filter((word) => !ASIDE.has(word))
    .join(" ");
}

/** Rows from `first` on that hold anything, from 0. */
export function filledRows(grid: Grid, first: number): number[] {
  const rows: number[] = [];
  for (let row = first; row < grid.rowCount; row += 1) {
    for (let column = 0; column < grid.columnCount; column += 1) {
      if (!isBlank(grid.at(row, column))) {
        rows.push(row);
        break;
      }
    }
  }
  return rows;
}
