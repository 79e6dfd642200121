/** What the sidebar is told of the answers that are tables, and where each answer stands. */

import type { ColumnKind } from "../core";
import type { CallShape } from "./call-shape";

export type FaceName = "places" | "needs" | "costs" | "balance" | "lookback" | "germination";

export interface FaceRequest {
  readonly face: FaceName;
}

/** The table that the tab of the same answer holds. */
export interface FaceAnswer {
  readonly columns: readonly { readonly name: string; readonly kind: ColumnKind }[];
  /** Days are ISO text; null where nothing is known. */
  readonly rows: readonly (readonly (string | number | null)[])[];
  /** What is left out, and where nothing can be answered, why. */
  readonly remark: string | null;
}

/** An answer, with where it is found. */
export interface IndexRow {
  /** Of its part within the section. */
  readonly part: string;
  readonly section: string;
  /** What its tab is called, or would be. */
  readonly tab: string;
  readonly answers: string;
}

export interface FacesCalls {
  readonly sidebarFace: CallShape<FaceRequest, FaceAnswer>;
  readonly sidebarIndex: CallShape<null, readonly IndexRow[]>;
}
