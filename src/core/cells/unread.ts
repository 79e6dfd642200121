import type { CivilDay } from "../dates";

/** Why a cell can't be read as what is due in it; src/wording says it. */
export type Unread =
  /** An error, such as "#N/A". */
  | { readonly code: "cell-shows"; readonly shown: string }
  | {
      readonly code:
        | "not-a-count"
        | "tick-box-for-count"
        | "date-for-count"
        | "part-of-a-plant"
        | "below-zero"
        | "too-many-plants"
        | "percent-of-nothing"
        | "over-100-percent";
    }
  | {
      readonly code:
        | "not-a-day"
        | "tick-box-for-day"
        | "number-for-day"
        | "no-such-day"
        | "day-or-month-first"
        | "no-year"
        | "neither-day-nor-yes";
    }
  | { readonly code: "either-day"; readonly days: readonly [CivilDay, CivilDay] }
  /** No batch is so old, and none is planned so far ahead. */
  | { readonly code: "too-far-away"; readonly day: CivilDay };

/** How a cell was understood that is not plainly written. */
export type ReadAs =
  | { readonly code: "count"; readonly count: number }
  /** A number that is used as it stands, and is larger than most. */
  | { readonly code: "many"; readonly count: number }
  /** A per cent of the plants counted before. */
  | {
      readonly code: "share";
      readonly count: number;
      /** 0 to 100. */
      readonly percent: number;
      readonly outOf: number;
    }
  /** A word that names nobody, as good as blank. */
  | { readonly code: "nobody" }
  /** A word that may also stand for what is not known. */
  | { readonly code: "not-to-be-done" }
  | { readonly code: "day"; readonly day: CivilDay };
