/** What the sidebar is told of the months ahead. Days are ISO text. */

import type { LeftOut, ReadyRow } from "../core";
import type { CallShape } from "./call-shape";

export interface AheadAnswer {
  readonly rows: readonly ReadyRow[];
  readonly batches: readonly AheadBatch[];
  readonly remarks: readonly LeftOut[];
}

export interface AheadBatch {
  readonly batch: string;
  readonly variety: string;
  readonly place: string;
  /** The month that counts it, as "2026-11". */
  readonly month: string;
  /** Ready already, and not yet all dispatched. */
  readonly isReady: boolean;
  readonly readyFrom: string | null;
  readonly readyLikely: string | null;
  readonly readyBy: string | null;
  readonly fewest: number | null;
  readonly likely: number | null;
  readonly most: number | null;
}

export interface AheadCalls {
  readonly sidebarAhead: CallShape<null, AheadAnswer>;
}
