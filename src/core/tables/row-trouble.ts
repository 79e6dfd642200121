import type { Unread } from "../cells";
import type { BesideTable } from "./beside-fields";

/** Tables of which a row is spoken of so; orders have their own words. */
export type SmallTable = Exclude<BesideTable, "orders">;

/** Why a row of such a table is not used. Texts are somebody's, shortened to a line. */
export type RowFault =
  | { readonly code: "nobody-named" }
  | { readonly code: "no-place-named" }
  | { readonly code: "no-item-named" }
  | { readonly code: "no-first-day" }
  | { readonly code: "weekday-with-last-day" }
  | { readonly code: "ends-before-it-begins" }
  | { readonly code: "not-a-day"; readonly found: string }
  /** No days of the week, or not plainly so. */
  | { readonly code: "not-weekdays"; readonly found: string }
  | { readonly code: "not-hours"; readonly found: string }
  | { readonly code: "more-hours-than-a-day"; readonly found: string }
  | { readonly code: "no-price"; readonly item: string }
  | { readonly code: "price-out-of-range" }
  | { readonly code: "not-a-price"; readonly found: string }
  | { readonly code: "not-a-unit"; readonly found: string }
  | { readonly code: "not-by-time"; readonly item: string }
  | { readonly code: "no-batch-named" }
  | { readonly code: "no-inspection-day" }
  | { readonly code: "no-day-of-sowing" }
  | { readonly code: "up-unread"; readonly why: Unread }
  | { readonly code: "up-blank" }
  /** Fewer in all than at the inspection before. */
  | { readonly code: "up-falls"; readonly before: number };

/** What there is to say of a row that is used. */
export type RowNote =
  | { readonly code: "no-such-step"; readonly found: string }
  /** Of two prices the higher counts. */
  | { readonly code: "second-price"; readonly item: string }
  | { readonly code: "read-as"; readonly count: number }
  /** Of two numbers the smaller counts. */
  | { readonly code: "named-twice"; readonly name: string }
  | { readonly code: "holds-unknown" }
  | { readonly code: "holds-unread"; readonly why: Unread };

/** What to say once of a whole table's columns; texts are somebody's, shortened to a line. */
export interface ColumnsRemark {
  /**
   * `columns-unread`: not used, and what they might be; `columns-guessed`: read for what stands in them alone;
   * `columns-ditto`: marks in them are read as the value above.
   */
  readonly code: "columns-unread" | "columns-guessed" | "columns-ditto";
  readonly table: BesideTable;
  readonly columns: readonly ColumnInDoubt[];
}

/** A column that is not read, or read for what stands in it alone. */
export interface ColumnInDoubt<Field extends string = string> {
  /** As it is written. */
  readonly header: string;
  /** What it is read as, or might be; null where nothing comes near. */
  readonly field: Field | null;
}

/** A row that can't be used, or not just as it is written; rows from 1 at the top of the table. */
export type RowTrouble =
  | ColumnsRemark
  | {
      readonly code: "row-left-out";
      readonly table: SmallTable;
      readonly row: number;
      readonly why: RowFault;
    }
  | {
      readonly code: "row-noted";
      readonly table: SmallTable;
      readonly row: number;
      readonly what: RowNote;
    };
