import type { Who } from "./ranges";
import type { Stage } from "./records-on-day";
import { type NurseryScore, type Quantity } from "./score-nursery";
/** One line of the table: means over nurseries, each counting equally. Shares are 0 to 1. */
export interface CoverLine {
  readonly nurseries: number;
  readonly ranges: number;
  /** Share of the batches asked about that got a range. */
  readonly given: number;
  readonly cover: number;
  /** Standard error of the cover, from how nurseries differ. */
  readonly error: number;
  /** Shares of ranges that the truth fell below, and above. */
  readonly below: number;
  readonly above: number;
  /** Days; or plants for each 100 standing. */
  readonly width: number;
  readonly score: number;
  /** Our cover and width on the batches of which this rival gave a range too. */
  readonly oursCover: number;
  readonly oursWidth: number;
}
export interface LineOf {
  readonly level: number;
  readonly who: Who;
  readonly quantity: Quantity;
  readonly stage: Stage | "all";
}
/** @returns null when no nursery got such a range */
export declare function coverLine(
  scores: readonly NurseryScore[],
  { level, who, quantity, stage }: LineOf,
): CoverLine | null;
