import { type NurseryHistory } from "./nursery-history";
import type { NurseryKind } from "./nursery-truth";
export declare const LEVELS: readonly number[];
/** The nurseries that ranges are checked on: few, some and many past batches. */
export declare const KINDS: readonly NurseryKind[];
export interface CheckedNursery {
  readonly history: NurseryHistory;
  readonly asOfDays: readonly number[];
}
/** An invented nursery, and the days on which it is asked. */
export declare function checkedNursery(kind: NurseryKind, seed: number): CheckedNursery;
