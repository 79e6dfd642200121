import type { Habit } from "./habit";
import { type SheetRow, type TableColumn } from "./sheet";
export declare const habitsOfRows: readonly Habit[];
/** Numbers of a batch's counts, by the table's columns. */
export declare function countIn(row: SheetRow, column: TableColumn): number | null;
