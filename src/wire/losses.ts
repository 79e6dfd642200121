/** What the sidebar is told of where plants are lost. */

import type { LeftOut, LossRow } from "../core";
import type { CallShape } from "./call-shape";
import type { NamedText } from "./named-text";

export interface LossesRequest {
  /** One of the columns offered; empty for all together. */
  readonly by: string;
}

export interface LossesAnswer {
  readonly by: string;
  /** What losses can be shown by. */
  readonly columns: readonly string[];
  readonly isByReason: boolean;
  readonly rows: readonly (Omit<LossRow, "group"> & { readonly group: readonly NamedText[] })[];
  /** Batches whose plants were never counted. */
  readonly notCounted: readonly string[];
  readonly withoutMethod: readonly string[];
  readonly leftOut: readonly LeftOut[];
  /** Whether the workbook has prices; without them nothing is told of costs. */
  readonly hasCosts: boolean;
  /** What is in no cost; null where nothing is said of costs. */
  readonly costRemark: string | null;
}

export interface LossesCalls {
  readonly sidebarLosses: CallShape<LossesRequest, LossesAnswer>;
}
