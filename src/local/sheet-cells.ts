import {
  CellValueType,
  type ICellData,
  type IRange,
  type Nullable,
  type Styles,
  type Workbook,
  type Worksheet,
} from "@univerjs/core";
import type { FormulaDataModel } from "@univerjs/engine-formula";
import { errorName, isErrorText } from "./cell-kinds";
import { unreadText } from "./spreadsheet-app/unread-formula";

/** One tab as it is calculated: what its cells show and what they are made of. */
export interface SheetCells {
  readonly name: string;
  /** Rows of cells from A1 on; null is an empty cell. Rows may be of unequal length. */
  readonly rows: readonly (readonly (SheetCell | null)[])[];
  readonly hidden: boolean;
  /** Column widths in pixels as the file had them; undefined where it named none. */
  readonly widths: readonly (number | undefined)[];
  readonly merges: readonly IRange[];
}

export interface SheetCell {
  /** A day is its serial number with a date pattern; an error is its text, such as "#N/A". */
  readonly value: string | number | boolean;
  /** The number format, '' when none. */
  readonly pattern: string;
  /** The formula of this cell with its "=", if it holds one. */
  readonly formula?: string;
  /** The formula as the file spells it, where that differs from `formula`. */
  readonly fileFormula?: string;
  /** The text of a formula that the workbook can't read; no file can hold it as a formula. */
  readonly unread?: string;
  /** The area that the formula of this cell fills, if it is more than this cell. */
  readonly spills?: IRange;
  /** True for a cell that the formula of another cell filled. */
  readonly spilled?: boolean;
  /** Why a custom function failed here. */
  readonly message?: string;
}

type Matrix<Item> = Readonly<Record<number, Readonly<Record<number, Item>> | undefined>>;

/** Reads every tab of a workbook in order. */
export function sheetsOf(workbook: Workbook, model: FormulaDataModel): SheetCells[] {
  const unitId = workbook.getUnitId();
  return workbook.getSheets().map((sheet) => {
    const sheetId = sheet.getSheetId();
    const spilled = model.getArrayFormulaCellData()?.[unitId]?.[sheetId];
    const areas = model.getArrayFormulaRange()?.[unitId]?.[sheetId];
    return readSheet(sheet, {
      styles: workbook.getStyles(),
      spilled: spilled ?? {},
      areas: areas ?? {},
    });
  });
}

/**
 * Reads one tab of the engine.
 * @param spilled the engine's record of cells that formulas filled beyond their own cell
 * @param areas the area that the formula of each such cell fills
 */
function readSheet(
  sheet: Worksheet,
  {
    styles,
    spilled,
    areas,
  }: {
    readonly styles: Styles;
    readonly spilled: Matrix<Nullable<ICellData>>;
    readonly areas: Matrix<IRange | null | undefined>;
  },
): SheetCells {
  const rows: (SheetCell | null)[][] = [];
  const put = (row: number, column: number, cell: SheetCell) => {
    while (rows.length <= row) rows.push([]);
    const cells = rows[row] as (SheetCell | null)[];
    while (cells.length <= column) cells.push(null);
    cells[column] = cell;
  };
  const patternOf = (cell: Nullable<ICellData>) =>
    (cell && styles.getStyleByCell(cell)?.n?.pattern) || "";

  for (const [row, columns] of Object.entries(spilled)) {
    for (const [column, cell] of Object.entries(columns ?? {})) {
      const read = cell && readCell(cell, patternOf(cell));
      if (read) put(Number(row), Number(column), { ...read, spilled: true });
    }
  }
  sheet.getCellMatrix().forValue((row, column, cell: Nullable<ICellData>) => {
    if (!cell) return;
    const area = areas[row]?.[column];
    const filled = spilled[row]?.[column];
    // A format set by hand on the cell wins over the one that the formula gave.
    const read = readCell(
      cell.v === null || cell.v === undefined ? { ...filled, ...cell, v: filled?.v } : cell,
      patternOf(cell) || patternOf(filled),
    );
    if (!read) return;
    const wide = area && (area.endRow > area.startRow || area.endColumn > area.startColumn);
    put(row, column, wide && read.formula ? { ...read, spills: area } : read);
  });

  const config = sheet.getConfig();
  const widths = Object.entries(config.columnData ?? {}).reduce<(number | undefined)[]>(
    (list, [column, data]) => {
      list[Number(column)] = data?.w;
      return list;
    },
    [],
  );
  return {
    name: sheet.getName(),
    rows,
    hidden: Boolean(config.hidden),
    widths,
    merges: config.mergeData ?? [],
  };
}

function readCell(cell: ICellData, pattern: string): SheetCell | null {
  const blank = cell.v === null || cell.v === undefined || cell.v === "";
  if (blank && !cell.f) return null;
  const value = blank ? "" : cellValue(cell);
  const unread = cell.f ? unreadText(cell.f) : null;
  const custom = (cell.custom ?? {}) as { message?: string; fileFormula?: string };
  return {
    value,
    pattern,
    ...(unread === null ? (cell.f ? { formula: cell.f } : {}) : { unread }),
    ...(cell.f && custom.fileFormula ? { fileFormula: custom.fileFormula } : {}),
    // The engine leaves the message behind when the cell recovers; it counts only beside an error.
    ...(value === "#ERROR!" && custom.message ? { message: custom.message } : {}),
  };
}

function cellValue(cell: ICellData): string | number | boolean {
  const value = cell.v as string | number | boolean;
  if (typeof value === "boolean") return value;
  if (cell.t === CellValueType.BOOLEAN) return Number(value) === 1 || value === "TRUE";
  if (cell.t === CellValueType.NUMBER) return Number(value);
  return isErrorText(value) ? errorName(value) : value;
}
