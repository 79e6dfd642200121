import type { Habit } from "./habit";
import { type Sheet } from "./sheet";
export declare const habitsOfColumns: readonly Habit[];
/** Brings each step's count column next to its day column. */
export declare function paired(sheet: Sheet): Sheet;
