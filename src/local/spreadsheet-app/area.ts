/** A block of cells of one tab, counted from 0. */
export interface Area {
  readonly row: number;
  readonly column: number;
  /** At least 1. */
  readonly rows: number;
  /** At least 1. */
  readonly columns: number;
}

/** How many rows and columns a tab has. */
interface GridSize {
  readonly rows: number;
  readonly columns: number;
}

/** The area as a formula names it, such as "B2:C5" or "B2". */
export function a1Of({ row, column, rows, columns }: Area): string {
  const first = `${columnName(column)}${row + 1}`;
  if (rows === 1 && columns === 1) return first;
  return `${first}:${columnName(column + columns - 1)}${row + rows}`;
}

/**
 * Reads "B2", "B2:C5", "$B$2", whole columns "B:D", whole rows "2:5" and open ends "B2:D" (down to
 * the last row of the tab).
 * @returns null for anything else
 */
export function areaOfA1(text: string, size: GridSize): Area | null {
  const parts = /^\$?([A-Za-z]{1,3})?\$?([1-9]\d*)?(?::\$?([A-Za-z]{1,3})?\$?([1-9]\d*)?)?$/.exec(
    text.trim(),
  );
  if (!parts) return null;
  const [, fromColumn, fromRow, toColumn, toRow] = parts;
  const alone = !text.includes(":");
  if (alone && !(fromColumn && fromRow)) return null;
  if (!alone && !(fromColumn || fromRow)) return null;
  if (!alone && !(toColumn || toRow)) return null;
  const top = fromRow ? Number(fromRow) - 1 : 0;
  const left = fromColumn ? columnNumber(fromColumn) : 0;
  const bottom = alone ? top : toRow ? Number(toRow) - 1 : size.rows - 1;
  const right = alone ? left : toColumn ? columnNumber(toColumn) : size.columns - 1;
  return {
    row: Math.min(top, bottom),
    column: Math.min(left, right),
    rows: Math.abs(bottom - top) + 1,
    columns: Math.abs(right - left) + 1,
  };
}

/** The sheet and the cells of a reference such as "'My tab'!A1"; sheet is null where none is named. */
export function splitReference(text: string): { sheet: string | null; cells: string } {
  const parts = /^(?:'((?:[^']|'')+)'|([^'!]+))!(.+)$/.exec(text);
  if (!parts) return { sheet: null, cells: text };
  return { sheet: (parts[1] ?? parts[2] ?? "").replaceAll("''", "'"), cells: parts[3] ?? "" };
}

function columnName(column: number): string {
  let name = "";
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    name = String.fromCharCode(65 + ((rest - 1) % 26)) + name;
  }
  return name;
}

/** Counted from 0. */
export function columnNumber(name: string): number {
  let number = 0;
  for (const letter of name.toUpperCase()) number = number * 26 + letter.charCodeAt(0) - 64;
  return number - 1;
}

/** Whether two areas of one tab have a cell in common. */
export function overlaps(one: Area, other: Area): boolean {
  return (
    one.row < other.row + other.rows &&
    other.row < one.row + one.rows &&
    one.column < other.column + other.columns &&
    other.column < one.column + one.columns
  );
}
