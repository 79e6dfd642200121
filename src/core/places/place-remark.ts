import type { LeftOut } from "../records";
import type { RowTrouble } from "../tables";

/** Batches that are left out, or stand in one week alone, and why. */
export type NamedBatches =
  /** When they leave is not known. */
  "one-week-alone" | "nothing-recorded" | "not-counted";

/** What is to be said beside the loads of places. */
export type PlaceRemark =
  | LeftOut
  | RowTrouble
  | { readonly code: "places-not-listed"; readonly places: readonly string[] }
  /** Nothing stands there in any of the weeks. */
  | { readonly code: "places-empty"; readonly places: readonly string[] }
  | { readonly code: "batches-without-place" }
  | { readonly code: NamedBatches; readonly batches: readonly string[] }
  | {
      readonly code: "planned-after";
      readonly batches: readonly string[];
      readonly weeks: number;
    }
  | { readonly code: "stand-longer"; readonly batches: number; readonly weeks: number };
