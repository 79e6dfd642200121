import { type Cell, type DayOrder, type Grid } from "../../core";
import type { BatchFact } from "../../core/words/language-words";
/** What a column of the sheet holds. "own" columns are the office's, which the reader leaves alone. */
export type Role =
  | {
      readonly kind: "fact";
      readonly fact: BatchFact;
    }
  | {
      readonly kind: "day" | "count";
      readonly step: string;
    }
  | {
      readonly kind: "own";
      readonly name: string;
    };
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
  | {
      readonly kind: "header";
    }
  /** Sums, headings, blank rows. */
  | {
      readonly kind: "other";
      readonly cells: readonly Cell[];
    };
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
export declare function roleKey(role: Role): string;
export declare function columnIndex(columns: readonly TableColumn[], key: string): number;
/** A copy of a row with one cell in place of another. */
export declare function replaced<T>(items: readonly T[], changed: number, item: T): T[];
/** Days stand in the steps' day columns, and in Closed. */
export declare function holdsDays({ role }: TableColumn): boolean;
export declare function holdsCounts({ role }: TableColumn): boolean;
/** Changes the cells of batches, column by column; `change` sees only cells of the columns chosen. */
export declare function withCells(
  sheet: Sheet,
  chosen: (column: TableColumn) => boolean,
  change: (cell: Cell, row: BatchRow, column: TableColumn) => Cell,
): Sheet;
export declare function withTables(
  sheet: Sheet,
  change: (table: SheetTable, index: number) => SheetTable,
): Sheet;
export declare function laidOut(sheet: Sheet): LaidOut;
