/** A batch as it was counted. */
export interface InventedBatch {
  readonly grafter: string;
  readonly variety: string;
  /** A civil day. */
  readonly graftedOn: number;
  readonly grafted: number;
  readonly taken: number;
}
export interface InventedTakes {
  readonly grafters: number;
  /** Batches of each grafter. */
  readonly batchesEach: number;
  /** Added to the first grafter's share of takes: −0.15 is 15 points lower. */
  readonly firstDiffers: number;
  /** "even": everyone grafts every variety alike; "uneven": the first mostly the hardest one. */
  readonly varietiesShared: "even" | "uneven";
  /** Height of the season's wave in log odds, at most. */
  readonly season: number;
  readonly days: number;
  /** From this day on, after the first, every take is so much less likely; null for never. */
  readonly fall: {
    readonly afterDays: number;
    readonly share: number;
  } | null;
}
export declare const FIRST_DAY = 20089;
/**
 * A nursery's batches in order of grafting, with batch noise: every batch has a fate of its own,
 * and a few are bad ones.
 *
 * Every figure is our choice of what is plausible; none is read from the mathematics that is checked.
 */
export declare function inventedTakes(kind: InventedTakes, seed: number): readonly InventedBatch[];
