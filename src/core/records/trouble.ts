import type { ReadAs, Unread } from "../cells";
import type { CivilDay } from "../dates";
import type { TimetableFault } from "../faults";
import type { ColumnTarget } from "./column-target";

/** How much a trouble costs: what is lost because of it. Lower is worse. */
export const COST = {
  /** The whole row is not used. */
  row: 1,
  /** A column is not used, for every row. */
  column: 2,
  /** One cell is not used. */
  cell: 3,
  /** The cell is used, but hardly says what was meant. */
  doubt: 4,
  /** The cell is used in a reading that is said. */
  reading: 5,
} as const;

export type Cost = (typeof COST)[keyof typeof COST];

/** Where a trouble stands. */
interface Found {
  /** Row in the range, from 1; null where it is about the whole table or a column. */
  readonly row: number | null;
  /** The column's header as it stands in the sheet; empty where it is about a row. */
  readonly column: string;
  /** The cell's text. */
  readonly found: string;
}

/** What is wrong, or hardly meant so, with its facts. Rows count from 1, days are civil days. */
type Amiss =
  | { readonly code: "cell-unread"; readonly why: Unread }
  | { readonly code: "cell-read-as"; readonly readAs: ReadAs }
  | { readonly code: "blanks-below" }
  | { readonly code: "filled-from-above"; readonly blanks: number }
  | { readonly code: "ditto-marks"; readonly marks: number }
  | { readonly code: "batch-not-in-table" }
  | { readonly code: "batch-spelt-otherwise"; readonly name: string }
  | { readonly code: "batch-unnamed"; readonly called: string }
  /** Once for a table: no column names its batches; the first is called so. */
  | { readonly code: "no-batch-column"; readonly called: string }
  | { readonly code: "same-name"; readonly firstRow: number }
  | { readonly code: "nearly-same-name"; readonly name: string; readonly firstRow: number }
  | { readonly code: "no-such-lot" }
  | { readonly code: "lots-in-a-circle" }
  | {
      readonly code: "lot-overdrawn";
      readonly taken: number;
      readonly there: number;
      readonly batches: readonly string[];
    }
  /** The table has no column of the header that was told to be `found`. */
  | { readonly code: "no-such-header" }
  /** The column was given a name, in `found`, that is none of ours and no step of the timetable. */
  | { readonly code: "no-such-column" }
  /** A column that is read as nothing; what it may be, the likeliest first. */
  | {
      readonly code: "column-left";
      readonly holds: "day" | "count" | "text";
      readonly others: readonly ColumnTarget[];
    }
  | {
      readonly code: "column-open";
      readonly readAs: ColumnTarget;
      readonly others: readonly ColumnTarget[];
    }
  | { readonly code: "columns-alike"; readonly used: string; readonly readAs: ColumnTarget }
  | { readonly code: "line-without-batch" }
  | { readonly code: "line-without-step" }
  | { readonly code: "line-without-day" }
  | { readonly code: "no-line" }
  | {
      readonly code: "no-batch";
      readonly as: "heading" | "note" | "sums" | "sums by numbers";
    }
  | { readonly code: "outside-tables" }
  /** The nearest name of a method, null where none is near. */
  | { readonly code: "no-such-method"; readonly near: string | null }
  | { readonly code: "several-methods"; readonly methods: readonly string[] }
  /** Of so many batches; another name of so many others is spelt nearly so. */
  | {
      readonly code: "near-alike";
      readonly batches: number;
      readonly name: string;
      readonly others: number;
    }
  | { readonly code: "count-rises"; readonly before: number; readonly step: string }
  | { readonly code: "before-step"; readonly step: string; readonly stepDay: CivilDay }
  /** Out of order with another step, and in order once its day and month are swapped: then it is `fits`. */
  | {
      readonly code: "day-swapped";
      readonly day: CivilDay;
      readonly fits: CivilDay;
      readonly against: string;
      readonly againstDay: CivilDay;
    }
  /** An ISO weekday on which nothing is done else; of so many other days none is one. */
  | { readonly code: "free-weekday"; readonly weekday: number; readonly others: number }
  /** Sooner after the step than half of the fewest days by the timetable. */
  | {
      readonly code: "too-soon";
      readonly step: string;
      readonly days: number;
      readonly fewest: number;
    }
  | { readonly code: "closed-standing"; readonly plants: number }
  /** The day says that it is done; what stands where the count is due is no number. */
  | { readonly code: "count-missing" }
  /** The wrap was never opened by the records, though a step has a day that comes after it. */
  | { readonly code: "release-missed"; readonly release: string; readonly step: string }
  /** So many days before the grafting, below 0 after it. */
  | { readonly code: "scions-cut"; readonly days: number }
  | { readonly code: "after-as-of"; readonly asOf: CivilDay }
  | { readonly code: "timetable"; readonly fault: TimetableFault };

/** Something in a table that a person should look at; src/wording says it. */
export type Trouble = Found & Amiss;

/** What costs more or less than a doubt. */
const COSTS: Readonly<Partial<Record<Trouble["code"], Cost>>> = {
  "no-batch-column": COST.column,
  "line-without-batch": COST.row,
  "line-without-step": COST.row,
  "columns-alike": COST.column,
  "no-such-column": COST.column,
  "no-such-header": COST.column,
  timetable: COST.column,
  "cell-unread": COST.cell,
  "no-such-method": COST.cell,
  "several-methods": COST.cell,
  "batch-spelt-otherwise": COST.reading,
  "cell-read-as": COST.reading,
  "ditto-marks": COST.reading,
  "filled-from-above": COST.reading,
  "no-batch": COST.reading,
  "no-line": COST.reading,
  "outside-tables": COST.reading,
};

export function costOf({ code }: Trouble): Cost {
  return COSTS[code] ?? COST.doubt;
}

/** Worst first, then from the top of the table down. */
export function byCost(a: Trouble, b: Trouble): number {
  return costOf(a) - costOf(b) || (a.row ?? 0) - (b.row ?? 0);
}
