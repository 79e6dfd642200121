import { CellValueType, type ICellData, type IRange, type Worksheet } from "@univerjs/core";
import { SetRangeValuesCommand } from "@univerjs/sheets";
import type { Area } from "./area";
import { type OpenBook, sheetOf } from "./open-book";
import type { TypedEntry } from "./typed-entry";

/** Cells by row and column, counted from 0. */
export type CellChanges = Record<number, Record<number, ICellData>>;

/** What is not in the new cell has to be cleared by name, or the old formula stays. */
const NOTHING = { v: null, t: null, f: null, si: null, p: null };

/** Writes cells at once, as one step for undo. */
export function writeCells(
  book: OpenBook,
  {
    sheetId,
    area,
    changes,
  }: { readonly sheetId: string; readonly area: Area; readonly changes: CellChanges },
): void {
  const value = uncovered(sheetOf(book, sheetId), changes);
  if (Object.keys(value).length === 0) return;
  book.execute(SetRangeValuesCommand.id, { subUnitId: sheetId, range: rangeOf(area), value });
}

/**
 * The changes without those of cells that a merge covers: they are swallowed without a word.
 * Source: public descriptions of merged cells ("the others will be empty cells"); that a write is
 * lost and not refused is from memory.
 */
function uncovered(sheet: Worksheet, changes: CellChanges): CellChanges {
  if (sheet.getMergeData().length === 0) return changes;
  const left: CellChanges = {};
  for (const [row, cells] of Object.entries(changes)) {
    const seen = Object.entries(cells).filter(
      ([column]) => !isCovered(sheet, Number(row), Number(column)),
    );
    if (seen.length > 0) left[Number(row)] = Object.fromEntries(seen);
  }
  return left;
}

/** Whether a cell, counted from 0, lies in a merge and is not its first one. */
export function isCovered(sheet: Worksheet, row: number, column: number): boolean {
  const merge = sheet.getMergedCell(row, column);
  return Boolean(merge) && !(merge?.startRow === row && merge.startColumn === column);
}

/**
 * The cell that an entry makes.
 * @param pattern the number format that the cell has, '' when none
 */
export function cellOfEntry(entry: TypedEntry, pattern: string): ICellData {
  switch (entry.kind) {
    case "blank":
      return { ...NOTHING };
    case "formula":
      return { ...NOTHING, f: entry.formula };
    case "boolean":
      return { ...NOTHING, v: entry.value ? 1 : 0, t: CellValueType.BOOLEAN };
    case "text": {
      // Forced text is marked, or the engine would make a number of "007" at the next change of format.
      const type = entry.forced ? CellValueType.FORCE_STRING : CellValueType.STRING;
      return { ...NOTHING, v: entry.text, t: type };
    }
    case "number":
      return numberCellOf(entry.value, pattern, entry.pattern);
  }
}

/**
 * A cell with a number.
 * @param has the format that the cell has, which stays
 * @param gets the format that it gets if it has none
 */
export function numberCellOf(value: number, has: string, gets: string): ICellData {
  const format = isPlain(has) && gets !== "" ? { s: { n: { pattern: gets } } } : {};
  return { ...NOTHING, v: value, t: CellValueType.NUMBER, ...format };
}

export interface ClearedArea {
  readonly sheetId: string;
  readonly area: Area;
  /** Whether the formats go with the contents. */
  readonly formatsToo: boolean;
}

/** Empties the cells of an area that hold something; formats go too when asked for. */
export function clearArea(book: OpenBook, { sheetId, area, formatsToo }: ClearedArea): void {
  const changes: CellChanges = {};
  sheetOf(book, sheetId)
    .getCellMatrix()
    .forValue((row, column) => {
      const inside =
        row >= area.row &&
        row < area.row + area.rows &&
        column >= area.column &&
        column < area.column + area.columns;
      if (!inside) return;
      changes[row] ??= {};
      (changes[row] as Record<number, ICellData>)[column] = formatsToo
        ? { ...NOTHING, s: null }
        : { ...NOTHING };
    });
  writeCells(book, { sheetId, area, changes });
}

/** The area as the engine names it. */
export function rangeOf({ row, column, rows, columns }: Area): IRange {
  return {
    startRow: row,
    endRow: row + rows - 1,
    startColumn: column,
    endColumn: column + columns - 1,
  };
}

function isPlain(pattern: string): boolean {
  return pattern === "" || pattern === "General";
}
