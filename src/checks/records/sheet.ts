import { type Cell, type DayOrder, type Grid, gridOf } from "../../core";
import type { BatchFact } from "../../core/words/language-words";

/** What a column of the sheet holds. "own" columns are the office's, which the reader leaves alone. */
export type Role =
  | { readonly kind: "fact"; readonly fact: BatchFact }
  | { readonly kind: "day" | "count"; readonly step: string }
  | { readonly kind: "own"; readonly name: string };

export interface TableColumn {
  readonly role: Role;
  /** The header; of a header of two rows the text in the upper one. */
  readonly upper: string;
  /** The text in the lower row of the header; empty where the table has none. */
  readonly lower: string;
}

export interface BatchRow {
  readonly kind: "batch";
  /** Which batch of the clean table this is. */
  readonly batch: number;
  readonly cells: readonly Cell[];
  /** The plants that the row's counts mean however they are written, by roleKey. */
  readonly counts: ReadonlyMap<string, number>;
}

export type SheetRow =
  | BatchRow
  /** The table's header once more. */
  | { readonly kind: "header" }
  /** Sums, headings, blank rows. */
  | { readonly kind: "other"; readonly cells: readonly Cell[] };

export interface SheetTable {
  /** Lines between this table and the one before it, or the top of the sheet. */
  readonly above: readonly (readonly Cell[])[];
  readonly columns: readonly TableColumn[];
  readonly rows: readonly SheetRow[];
}

/** A nursery's sheet while an office's habits are put upon it. */
export interface Sheet {
  readonly tables: readonly SheetTable[];
  readonly below: readonly (readonly Cell[])[];
  /** The workbook's locale, such as "en_GB". */
  readonly locale: string;
  /** How days of two numbers are written where there are any. */
  readonly dayOrder: DayOrder | null;
  /** The roleKey of the column whose values stand in merged cells; null where none does. */
  readonly mergedColumn: string | null;
}

/** A sheet as cells, and where each thing stands in them. */
export interface LaidOut {
  readonly grid: Grid;
  /** By batch: its row, from 1 at the top, its table, and its cells. */
  readonly batchesAt: ReadonlyMap<number, BatchAt>;
}

export interface BatchAt {
  readonly row: number;
  readonly table: SheetTable;
  readonly cells: readonly Cell[];
}

export function roleKey(role: Role): string {
  if (role.kind === "fact") return role.fact;
  return role.kind === "own" ? `own ${role.name}` : `${role.kind} of ${role.step}`;
}

export function columnIndex(columns: readonly TableColumn[], key: string): number {
  return columns.findIndex(({ role }) => roleKey(role) === key);
}

/** A copy of a row with one cell in place of another. */
export function replaced<T>(items: readonly T[], changed: number, item: T): T[] {
  return items.map((one, index) => (index === changed ? item : one));
}

/** Days stand in the steps' day columns, and in Closed. */
export function holdsDays({ role }: TableColumn): boolean {
  return role.kind === "day" || (role.kind === "fact" && role.fact === "closed");
}

export function holdsCounts({ role }: TableColumn): boolean {
  return (
    role.kind === "count" ||
    (role.kind === "fact" && (role.fact === "culled" || role.fact === "dispatched"))
  );
}

/** Changes the cells of batches, column by column; `change` sees only cells of the columns chosen. */
export function withCells(
  sheet: Sheet,
  chosen: (column: TableColumn) => boolean,
  change: (cell: Cell, row: BatchRow, column: TableColumn) => Cell,
): Sheet {
  return withTables(sheet, (table) => ({
    ...table,
    rows: table.rows.map((row) =>
      row.kind !== "batch"
        ? row
        : {
            ...row,
            cells: row.cells.map((cell, index) => {
              const column = table.columns[index] as TableColumn;
              return chosen(column) ? change(cell, row, column) : cell;
            }),
          },
    ),
  }));
}

export function withTables(
  sheet: Sheet,
  change: (table: SheetTable, index: number) => SheetTable,
): Sheet {
  return { ...sheet, tables: sheet.tables.map(change) };
}

export function laidOut(sheet: Sheet): LaidOut {
  const lines: (readonly Cell[])[] = [];
  const batchesAt = new Map<number, BatchAt>();
  for (const table of sheet.tables) {
    lines.push(...table.above);
    const header = headerLines(table);
    lines.push(...header);
    for (const row of table.rows) {
      if (row.kind === "header") lines.push(...header);
      else {
        lines.push(row.cells);
        if (row.kind === "batch") {
          batchesAt.set(row.batch, { row: lines.length, table, cells: row.cells });
        }
      }
    }
  }
  return { grid: gridOf([...lines, ...sheet.below]), batchesAt };
}

function headerLines({ columns }: SheetTable): Cell[][] {
  const upper = columns.map((column) => column.upper);
  const lower = columns.map((column) => column.lower);
  return lower.some((text) => text !== "") ? [upper, lower] : [upper];
}
