import type { Dice } from "./dice";
import { type BatchRow, type Sheet, type TableColumn } from "./sheet";
export interface CleanTable {
  readonly columns: readonly TableColumn[];
  readonly rows: readonly BatchRow[];
}
/** The clean sample, whole. @param folder the project's */
export declare function cleanTable(folder: string): CleanTable;
/** A part of the clean sample as a sheet of its own. @param size how many batches */
export declare function cleanSheet({ columns, rows }: CleanTable, size: number, dice: Dice): Sheet;
/** A nursery ten times as large. */
export declare function tenfold(sheet: Sheet): Sheet;
