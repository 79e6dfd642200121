import { type CivilDay, isoDay } from "../dates";

/** A date cell, read in the spreadsheet's own time zone. */
export interface DayCell {
  readonly day: CivilDay;
}

/** What a cell holds. A blank cell is the empty text. */
export type Cell = string | number | boolean | DayCell;

/** A rectangle of cells. Rows and columns count from 0. */
export interface Grid {
  readonly rowCount: number;
  readonly columnCount: number;
  at(row: number, column: number): Cell;
}

/** A grid over rows in memory; short rows read as blank. */
export function gridOf(rows: readonly (readonly Cell[])[]): Grid {
  const columnCount = rows.reduce((widest, row) => Math.max(widest, row.length), 0);
  return {
    rowCount: rows.length,
    columnCount,
    at: (row, column) => rows[row]?.[column] ?? "",
  };
}

export function isDayCell(cell: Cell): cell is DayCell {
  return typeof cell === "object";
}

/** Blank is no text at all, or spaces only; 0 and false are not blank. */
export function isBlank(cell: Cell): boolean {
  return cell === "" || (typeof cell === "string" && cell.trim() === "");
}

/** The cell as a person sees it, spaces at the ends dropped and runs of white space made one space. */
export function cellText(cell: Cell): string {
  if (typeof cell === "string") return tidy(cell);
  if (typeof cell === "object") return isoDay(cell.day);
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  return String(cell);
}

const WHITE_SPACE_RUNS = /\s+/g;

function tidy(text: string): string {
  return isTidy(text) ? text : text.replace(WHITE_SPACE_RUNS, " ").trim();
}

// Nearly every cell is tidy, and looking letter by letter is far cheaper than a replacement.
function isTidy(text: string): boolean {
  let spaceBefore = true;
  for (let i = 0; i < text.length; i += 1) {
    const code = text.charCodeAt(i);
    const space = code === 32;
    if (space ? spaceBefore : code < 32 || (code > 126 && mayBeSpace(code))) return false;
    spaceBefore = space;
  }
  return !spaceBefore || text === "";
}

/** No-break and typographic spaces lie here, and some harmless letters. */
function mayBeSpace(code: number): boolean {
  return code < 192 || (code >= 0x1680 && code <= 0x205f) || code === 0x3000 || code === 0xfeff;
}
