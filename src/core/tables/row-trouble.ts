import type { Unread } from "../cells";

/** Tables that a nursery keeps beside its records. */
export type SmallTable = "crew" | "closed-days" | "places" | "prices";

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
  | { readonly code: "not-by-time"; readonly item: string };

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

/** A row that can't be used, or not just as it is written; rows from 1 at the top of the table. */
export type RowTrouble =
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
