import { CellValueType, type ICellData, type Nullable } from "@univerjs/core";
import { errorName, isDatePattern, isErrorText, isTextPattern } from "../cell-kinds";
import type { Area } from "./area";
import { isCovered } from "./cell-writing";
import { type OpenBook, sheetOf } from "./open-book";

/** One cell as it stands in the workbook now. */
export interface CellReading {
  /** A day is its serial number and an error its text; null for a blank cell. */
  readonly value: string | number | boolean | null;
  readonly kind: "blank" | "text" | "number" | "day" | "boolean";
  /** The number format, '' when none. */
  readonly pattern: string;
  /** With its "=", '' when the cell holds none. */
  readonly formula: string;
}

/** Reads cells of one tab, counted from 0; made anew for every look, since cells move. */
export type CellReader = (row: number, column: number) => CellReading;

const BLANK: CellReading = { value: null, kind: "blank", pattern: "", formula: "" };

/** @param sheetId the id of a tab that is there */
export function cellReader(book: OpenBook, sheetId: string): CellReader {
  const sheet = sheetOf(book, sheetId);
  const cells = sheet.getCellMatrix();
  const hasMerges = sheet.getMergeData().length > 0;
  const styles = book.workbook.getStyles();
  const spilled = book.formulas.getArrayFormulaCellData()?.[book.unitId]?.[sheetId];
  const patterns = new Map<string, string>();
  const patternOf = (cell: Nullable<ICellData>): string => {
    const style = cell?.s;
    if (typeof style === "string") {
      const known = patterns.get(style);
      if (known !== undefined) return known;
    }
    const pattern = (cell && styles.getStyleByCell(cell)?.n?.pattern) || "";
    if (typeof style === "string") patterns.set(style, pattern);
    return pattern;
  };
  return (row, column) => {
    const own: Nullable<ICellData> = cells.getValue(row, column);
    const filled = spilled?.[row]?.[column];
    if (!own && !filled) return BLANK;
    // A file may keep what stood in cells before they were merged.
    if (hasMerges && isCovered(sheet, row, column)) return { ...BLANK, pattern: patternOf(own) };
    const blank = own?.v === undefined || own.v === null || own.v === "";
    const pattern = patternOf(own) || patternOf(filled);
    const formula =
      own && (own.f || own.si) ? formulaOf(book, { sheetId, cell: own, row, column }) : "";
    return readingOf(blank && filled ? filled : own, pattern, formula);
  };
}

function formulaOf(
  book: OpenBook,
  {
    sheetId,
    cell,
    row,
    column,
  }: {
    readonly sheetId: string;
    readonly cell: ICellData;
    readonly row: number;
    readonly column: number;
  },
): string {
  if (cell.f) return cell.f;
  // Filled-down formulas share one text, which the engine shifts for each cell.
  return book.formulas.getFormulaStringByCell(row, column, sheetId, book.unitId) ?? "";
}

function readingOf(cell: Nullable<ICellData>, pattern: string, formula: string): CellReading {
  const value = cell?.v;
  if (value === null || value === undefined || value === "") {
    return { value: null, kind: "blank", pattern, formula };
  }
  if (typeof value === "boolean") return { value, kind: "boolean", pattern, formula };
  if (cell?.t === CellValueType.BOOLEAN) {
    const truth = Number(value) === 1 || value === "TRUE";
    return { value: truth, kind: "boolean", pattern, formula };
  }
  if (typeof value === "number" || cell?.t === CellValueType.NUMBER) {
    // Numbers in cells of text format are text (numbers typed there stay what was typed).
    if (isTextPattern(pattern)) return { value: String(value), kind: "text", pattern, formula };
    const kind = isDatePattern(pattern) ? "day" : "number";
    return { value: Number(value), kind, pattern, formula };
  }
  return { value: isErrorText(value) ? errorName(value) : value, kind: "text", pattern, formula };
}

/** The readings of every cell of an area, row by row. */
export function readArea(book: OpenBook, sheetId: string, area: Area): CellReading[][] {
  const read = cellReader(book, sheetId);
  return Array.from({ length: area.rows }, (_, row) =>
    Array.from({ length: area.columns }, (__, column) =>
      read(area.row + row, area.column + column),
    ),
  );
}

/**
 * How far a tab is filled: the number of rows and columns up to the last cell with content. A
 * formula counts even if it shows nothing, an unticked checkbox too, a mere format doesn't.
 */
export function filledSize(book: OpenBook, sheetId: string): { rows: number; columns: number } {
  let rows = 0;
  let columns = 0;
  const reach = (row: number, column: number) => {
    if (row >= rows) rows = row + 1;
    if (column >= columns) columns = column + 1;
  };
  const isFilled = (cell: Nullable<ICellData>) =>
    cell && ((cell.v !== undefined && cell.v !== null && cell.v !== "") || cell.f || cell.si);
  sheetOf(book, sheetId)
    .getCellMatrix()
    .forValue((row, column, cell: Nullable<ICellData>) => {
      if (isFilled(cell)) reach(row, column);
    });
  const spilled = book.formulas.getArrayFormulaCellData()?.[book.unitId]?.[sheetId] ?? {};
  for (const [row, cells] of Object.entries(spilled)) {
    for (const [column, cell] of Object.entries(cells ?? {})) {
      if (isFilled(cell as Nullable<ICellData>)) reach(Number(row), Number(column));
    }
  }
  return { rows, columns };
}
