import type { ReadAs, Unread } from "../cells";
import type { CivilDay } from "../dates";
import type { LeftOut } from "../records";
import type { ColumnsRemark } from "../tables";
import type { OrderField } from "./order-columns";

/** What is amiss in a row of orders. */
export type OrderTrouble =
  | { readonly code: "cell-unread"; readonly field: OrderField; readonly why: Unread }
  | { readonly code: "cell-read-as"; readonly field: OrderField; readonly readAs: ReadAs }
  | { readonly code: "cell-blank"; readonly field: OrderField }
  | { readonly code: "cell-shows"; readonly field: OrderField; readonly shown: string }
  | { readonly code: "none-wanted" };

/** Rows from 1 at the top of the table. */
export interface OrderRowTroubles {
  readonly row: number;
  readonly troubles: readonly OrderTrouble[];
}

/** Batches that are counted for no order that names a variety, or not for one spelt nearly as theirs. */
export type VarietyInDoubt =
  | { readonly code: "variety-blank"; readonly batches: readonly string[] }
  | {
      readonly code: "variety-near";
      readonly variety: string;
      readonly ordered: string;
      readonly batches: readonly string[];
    };

/** What is to be said beside orders. */
export type OrdersRemark =
  | LeftOut
  | ColumnsRemark
  | { readonly code: "orders-left-out"; readonly rows: readonly OrderRowTroubles[] }
  /** Used, but not all of their cells, or not just as they are written. */
  | { readonly code: "orders-noted"; readonly rows: readonly OrderRowTroubles[] }
  | VarietyInDoubt
  /** Pairs of customers that may be one. */
  | {
      readonly code: "customers-near";
      readonly pairs: readonly (readonly [one: string, other: string])[];
    }
  /** Batches that are counted for no order of a crop, since theirs is not known. */
  | { readonly code: "crop-unknown"; readonly batches: readonly string[] }
  /** Varieties that no batch has, of orders that take others, too. */
  | {
      readonly code: "varieties-unknown";
      readonly orders: readonly { readonly order: string; readonly varieties: readonly string[] }[];
    };

/** What to do for an order. */
export type OrderAction =
  | { readonly code: "all-delivered" }
  | { readonly code: "fine" }
  | { readonly code: "deliver-now" }
  /** Nothing more can be done but to tell the customer. */
  | { readonly code: "too-late" }
  | { readonly code: "too-late-to-start" }
  /** Any plant is ordered, and batches are of several crops: one who wants cocoa takes no mango. */
  | { readonly code: "which-crop"; readonly crops: readonly string[] }
  /** No batch is what it names, so that it may be a slip: nothing is planned from it. */
  | {
      readonly code: "no-such-variety";
      readonly variety: string;
      /** Those of batches that may be meant, the nearest first; may be none. */
      readonly nearest: readonly string[];
    }
  | {
      readonly code: "start-more" | "graft-more";
      readonly plants: number;
      /** Empty where none is named. */
      readonly variety: string;
      readonly by: CivilDay;
    };

/** How a number of a plan came about. Chances are 0 to 1. */
export type PlanFact =
  | { readonly code: "plain-division"; readonly plants: number }
  | {
      readonly code: "more-than-plain";
      readonly plants: number;
      readonly more: number;
      readonly chance: number;
    }
  /** The share that passes is of nurseries in general. @prop mean what the records make of it; null where nothing */
  | { readonly code: "general-share"; readonly kept: number; readonly mean: number | null }
  | { readonly code: "chances"; readonly ofPlants: number; readonly ofDays: number };

/** What asks for care in a plan. */
export type PlanWarning =
  | { readonly code: "no-start-large-enough" }
  | { readonly code: "first-variety"; readonly variety: string }
  /** The names that may be meant; may be none. */
  | {
      readonly code: "unknown-variety";
      readonly variety: string;
      readonly nearest: readonly string[];
    }
  | { readonly code: "outside-harvest"; readonly months: string; readonly last: CivilDay }
  | { readonly code: "start-was-due"; readonly day: CivilDay }
  | { readonly code: "asked-day-past" }
  | {
      readonly code: "started-now";
      readonly asOf: CivilDay;
      readonly wanted: number;
      readonly earliest: CivilDay;
    }
  | {
      readonly code: "larger-start";
      readonly by: CivilDay;
      readonly wanted: number;
      readonly start: number;
    }
  | { readonly code: "new-start-none"; readonly by: CivilDay }
  | { readonly code: "standing-can"; readonly by: CivilDay; readonly plants: number }
  | { readonly code: "day-past" };
