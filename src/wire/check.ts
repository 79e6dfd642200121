/** What the sidebar is told of the rows that could not be used, and where it leads to. */

import type { Trouble } from "../core";
import type { CallShape } from "./call-shape";

export interface CheckAnswer {
  /** Most plants at stake first, those of which none are known last. */
  readonly rows: readonly CheckRow[];
  /** One sentence that counts the rows used and left out. */
  readonly tally: string;
}

export interface CheckRow {
  /** What it is; null where it is about no record. */
  readonly code: Trouble["code"] | null;
  /** Rows of the records tab, from 1, from the top; none where it is about a column or a whole table. */
  readonly rows: readonly number[];
  /** The other tab that it is about; null where it is about the records, or about none. */
  readonly tab: string | null;
  /** Plants at stake; null where none are known. */
  readonly plants: number | null;
  /** Header as it stands in the sheet; empty where the trouble is about a row. */
  readonly column: string;
  readonly found: string;
  readonly trouble: string;
  readonly whatHappens: string;
  readonly whatToDo: string;
  /** Whether it is used, in a reading that is said, so that nothing needs to be done if that is right. */
  readonly isReading: boolean;
}

export interface SelectRequest {
  /** Another tab, of which no cell is meant; null or left out for the records. */
  readonly tab?: string | null;
  /** Row of the records tab, from 1; null selects the column's header. */
  readonly row: number | null;
  /** Header as it stands in the sheet; empty selects the whole row. */
  readonly column: string;
}

export interface SelectAnswer {
  /** Tab and cell, as "Records!N12", or another tab. */
  readonly selected: string;
}

export interface CheckCalls {
  readonly sidebarCheck: CallShape<null, CheckAnswer>;
  readonly sidebarSelect: CallShape<SelectRequest, SelectAnswer>;
}
