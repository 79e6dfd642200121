import { type Grid, type Records } from "../../core";
import { type LaidOut, type Sheet } from "./sheet";
/** What the reader made of a sheet. */
export interface Reading extends LaidOut {
  /** null where the reader refused the whole sheet. */
  readonly records: Records | null;
  /** BATCH_CHECK's rows; for a refused sheet none. */
  readonly listed: readonly Listed[];
  /** The sentence that a refused sheet was refused with. */
  readonly refusal: string | null;
}
/** A row of BATCH_CHECK. */
export interface Listed {
  readonly row: number | null;
  readonly column: string;
  readonly found: string;
  readonly trouble: string;
}
/** Reads a sheet as the custom functions do. @throws Error what is no sentence for people */
export declare function readSheet(sheet: Sheet): Reading;
/** @throws InputError where the grid can't be read as records */
export declare function readGrid(grid: Grid, locale: string): Records;
