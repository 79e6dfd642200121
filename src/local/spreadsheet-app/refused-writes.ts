import { CellValueType, type ICellData } from "@univerjs/core";
import { type Area, a1Of, overlaps } from "./area";
import type { CellChanges } from "./cell-writing";
import { type OpenBook, sheetOf } from "./open-book";
import { ServiceError } from "./service-error";
import { type ColumnType, changeRules, rulesOf, type Table } from "./tab-rules";

/** Source of the sentence: public projects that met it, in scripts and in the spreadsheet itself. */
const PROTECTED =
  "You are trying to edit a protected cell or object. Please contact the spreadsheet owner to remove protection if you need to edit.";

/**
 * Refuses what the running user may not change.
 * @param area null for something that belongs to the tab as a whole, such as its name
 * @throws ServiceError
 */
export function refuseProtected(book: OpenBook, sheetId: string, area: Area | null): void {
  const { isProtected, protectedAreas } = rulesOf(sheetOf(book, sheetId));
  if (isProtected || (area && protectedAreas.some((one) => overlaps(one, area)))) {
    throw new ServiceError(PROTECTED);
  }
}

/** From memory: a tab with protected cells can't be deleted by who may not change them. */
export function refuseDeletion(book: OpenBook, sheetId: string): void {
  const { isProtected, protectedAreas } = rulesOf(sheetOf(book, sheetId));
  if (isProtected || protectedAreas.length > 0) throw new ServiceError(PROTECTED);
}

/** What is refused in the typed columns of a table besides values. */
export type TypedColumnAct = "format" | "rule";

/** Source of both sentences: public projects that met them in workbooks with tables. */
const TYPED: Readonly<Record<TypedColumnAct, string>> = {
  format: "You can't set the number format of cells in a typed column.",
  rule: "This operation is not allowed on cells in typed columns.",
};

/** @throws ServiceError when an area reaches into a typed column of a table */
export function refuseInTypedColumn(
  book: OpenBook,
  {
    sheetId,
    area,
    act,
  }: { readonly sheetId: string; readonly area: Area; readonly act: TypedColumnAct },
): void {
  for (const table of rulesOf(sheetOf(book, sheetId)).tables) {
    for (const column of Object.keys(table.types).map(Number)) {
      if (overlaps(area, { ...table, column, columns: 1 })) throw new ServiceError(TYPED[act]);
    }
  }
}

/**
 * Refuses values of another type than that of a table's column. *From memory*: that a column refuses
 * rather than marks them, and the wording.
 * @throws ServiceError that names the first such cell
 */
export function refuseOtherTypes(book: OpenBook, sheetId: string, changes: CellChanges): void {
  const { tables } = rulesOf(sheetOf(book, sheetId));
  for (const table of tables) {
    for (const [row, cells] of Object.entries(changes)) {
      // The header holds names.
      if (Number(row) <= table.row || Number(row) >= table.row + table.rows) continue;
      for (const [column, cell] of Object.entries(cells)) {
        const type = table.types[Number(column)];
        if (type === undefined || fits(type, cell)) continue;
        const at = { row: Number(row), column: Number(column), rows: 1, columns: 1 };
        throw new ServiceError(
          `The data you entered in cell ${a1Of(at)} violates the data validation rules set on this cell.`,
        );
      }
    }
  }
}

function fits(type: ColumnType, cell: ICellData): boolean {
  if (cell.f || cell.v === null || cell.v === undefined || cell.v === "") return true;
  if (type === "checkbox") return cell.t === CellValueType.BOOLEAN;
  if (type === "number" || type === "day") return cell.t === CellValueType.NUMBER;
  return type.includes(String(cell.v));
}

/** Lets tables that grow take in a line that is written right below them. */
export function growTables(book: OpenBook, sheetId: string, area: Area): void {
  const sheet = sheetOf(book, sheetId);
  const { tables } = rulesOf(sheet);
  const grows = (table: Table) =>
    table.joins && overlaps(area, { ...table, row: table.row + table.rows, rows: 1 });
  if (!tables.some(grows)) return;
  changeRules(sheet, {
    tables: tables.map((table) => (grows(table) ? { ...table, rows: table.rows + 1 } : table)),
  });
}
