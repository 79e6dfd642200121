import type { ICellData } from "@univerjs/core";
import { LexerTreeBuilder } from "@univerjs/engine-formula";
import type { Area } from "./area";
import { type CellReading, cellReader } from "./cell-reading";
import { type CellChanges, writeCells } from "./cell-writing";
import { wholeArgument } from "./grid-arguments";
import { type OpenBook, sheetOf } from "./open-book";

/** A column of the tab, counted from 0, and which way. */
export interface SortColumn {
  readonly column: number;
  readonly ascending: boolean;
}

/** What a moved cell must not keep of the one that stood there. */
const NOTHING: ICellData = { v: null, t: null, f: null, si: null, p: null, s: null };

/**
 * Sorts the rows of an area. Cells that a formula of another cell fills count as what they show, but
 * stay where they are; a formula's relative references follow its row. Numbers come before texts,
 * texts before boxes, blanks last. All from memory; so is that rules for input stay in place.
 */
export function sortRows(
  book: OpenBook,
  {
    sheetId,
    area,
    by,
  }: { readonly sheetId: string; readonly area: Area; readonly by: readonly SortColumn[] },
): void {
  const read = cellReader(book, sheetId);
  const cells = sheetOf(book, sheetId).getCellMatrix();
  const lexer = book.injector.get(LexerTreeBuilder);
  const rows = Array.from({ length: area.rows }, (_, at) => area.row + at);
  const sorted = [...rows].sort((one, other) => {
    for (const { column, ascending } of by) {
      const order = compared(read(one, column), read(other, column), ascending);
      if (order !== 0) return order;
    }
    return one - other;
  });
  const changes: CellChanges = {};
  sorted.forEach((from, at) => {
    const to = area.row + at;
    if (from === to) return;
    const line: Record<number, ICellData> = {};
    for (let column = area.column; column < area.column + area.columns; column += 1) {
      const { formula } = read(from, column);
      // A formula's own value is calculated anew.
      const moved =
        formula === ""
          ? {}
          : { f: lexer.moveFormulaRefOffset(formula, 0, to - from), si: null, v: null };
      const standing = structuredClone(cells.getValue(from, column) ?? {});
      line[column] = { ...NOTHING, ...standing, ...moved };
    }
    changes[to] = line;
  });
  writeCells(book, { sheetId, area, changes });
}

/**
 * The columns to sort by, as a script names them: a number, or `{ column, ascending }`, or a list of
 * such. Source: reference page of Range.sort.
 */
export function sortColumns(spec: unknown, method: string): readonly SortColumn[] {
  return (Array.isArray(spec) ? spec : [spec]).map((one: unknown) => {
    const { column, ascending = true } =
      typeof one === "object" && one !== null
        ? (one as { column?: unknown; ascending?: unknown })
        : { column: one };
    return { column: wholeArgument(column, method) - 1, ascending: ascending === true };
  });
}

const RANK: Readonly<Record<CellReading["kind"], number>> = {
  number: 0,
  day: 0,
  text: 1,
  boolean: 2,
  blank: 3,
};

function compared(one: CellReading, other: CellReading, ascending: boolean): number {
  const [a, b] = [RANK[one.kind], RANK[other.kind]];
  // Blanks stay last whichever way.
  if (one.kind === "blank" || other.kind === "blank") return a - b;
  const order =
    a - b ||
    (a === 1
      ? String(one.value).localeCompare(String(other.value))
      : Number(one.value) - Number(other.value));
  return ascending ? order : -order;
}
