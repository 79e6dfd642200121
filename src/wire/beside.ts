/** What the sidebar asks of the tables beside the records, and what the person tells of them. */

import type { CallShape } from "./call-shape";
import type { ColumnChoice, ColumnGuess } from "./columns";

/** A table that may stand beside the records. */
export type BesideTableName =
  | "orders"
  | "crew"
  | "closed-days"
  | "places"
  | "prices"
  | "germination";

/** What a person has changed of a table. */
export interface TableTold {
  readonly table: BesideTableName;
  /** The tab in which it stands; "" for none, left out where that was not changed. */
  readonly tab?: string | undefined;
  readonly columns: readonly ColumnChoice[];
}

export interface BesideRequest {
  /** The tab of the records, which is none of them. */
  readonly tab: string;
  /** What was changed by now. */
  readonly told: readonly TableTold[];
}

export interface BesideGuess {
  readonly table: BesideTableName;
  /** What we call it. */
  readonly name: string;
  /** Null where no tab holds it. */
  readonly tab: string | null;
  /** Where no tab holds it, the one in which it may stand; null where none comes near. */
  readonly likely: string | null;
  /** The tab that was told and is gone; null where none is. */
  readonly lostTab: string | null;
  /** Whether it can be read as such a table, or some columns have to be told first. */
  readonly isRead: boolean;
  readonly columns: readonly ColumnGuess[];
  /** Everything that a column of it may be read as. */
  readonly choices: readonly string[];
}

export interface TablesAnswer {
  /** Tabs in which a table may stand, in the order of the workbook. */
  readonly tabs: readonly string[];
  readonly tables: readonly BesideGuess[];
}

export interface BesideCalls {
  readonly sidebarTables: CallShape<BesideRequest, TablesAnswer>;
}
