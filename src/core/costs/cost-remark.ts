import type { LeftOut } from "../records";
import type { RowTrouble } from "../tables";

/** An item needed that has no price in the unit in which it is needed. Texts are somebody's. */
export interface UnpricedItem {
  readonly item: string;
  /** Empty for pieces. */
  readonly unit: string;
  /** Units in which it has prices. */
  readonly pricedBy: readonly string[];
}

/** What is to be said beside costs; what is named is not in the sums. */
export type CostRemark =
  | LeftOut
  | RowTrouble
  | { readonly code: "items-without-price"; readonly items: readonly UnpricedItem[] }
  | { readonly code: "hour-without-price" }
  | { readonly code: "hour-not-used" }
  | { readonly code: "steps-without-rate"; readonly steps: readonly string[] }
  | {
      readonly code: "steps-without-plants";
      readonly batches: readonly { readonly batch: string; readonly steps: readonly string[] }[];
    }
  | { readonly code: "prices-not-needed"; readonly items: readonly string[] }
  | { readonly code: "not-begun"; readonly batches: number };
