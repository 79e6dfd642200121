import type { CivilDay } from "../../core";
import type { LineAlready } from "../../wording/writing-codes";
import type { TableCell } from "../reading/table-columns";

/** Where a task of a batch is recorded, and what it has to agree with. */
export interface TaskTarget extends TaskCells {
  readonly stepName: string;
  readonly stepKey: string;
  readonly counted: boolean;
  /** The day and the count that the records have for it; null where they have none. */
  readonly recordedDay: CivilDay | null;
  readonly recordedCount: number | null;
  /** The count before, which this one can't exceed. */
  readonly before: { readonly name: string; readonly count: number } | null;
  /** The last step before it, of those that it comes after, of which the day is known. */
  readonly earlierDay: { readonly name: string; readonly day: CivilDay } | null;
}

/** The cells in which a task is recorded; null where the table has none. */
export interface TaskCells {
  /** The table's number, see Records.tables. */
  readonly table: number;
  /** The cell with the batch's name; null for a new line of a log. */
  readonly name: TableCell | null;
  readonly day: TableCell | null;
  readonly count: TableCell | null;
  readonly person: TableCell | null;
  readonly note: TableCell | null;
  /** Further cells of a new line in a log. */
  readonly alsoWrite: readonly { readonly at: TableCell; readonly text: string }[];
  /** What has to be asked before a further line is written for the same job; null when nothing. */
  readonly secondLine: LineAlready | null;
}
