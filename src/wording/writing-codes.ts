/**
 * What the workbook asks, or gives as its reason, where it writes into a person's tabs: codes, which are
 * the keys of their messages, with the facts of these. A day is text that is already written, a cell is
 * named as "Records!F12" or "F12".
 */

/** Somebody else was at work in the table: nothing is written. */
export type MeanwhileFault =
  | { readonly code: "moved" }
  | { readonly code: "changed" | "swallowed" | "holdsFormula"; readonly cell: string }
  | { readonly code: "filled"; readonly cell: string; readonly filler: string };

/** Why something could not be written, taken back or made. */
export type WritingFault =
  | MeanwhileFault
  /** What another room or the spreadsheet itself says. */
  | { readonly code: "said"; readonly sentence: string }
  | { readonly code: "notPutBack"; readonly because: string; readonly cells: Cells }
  /** The spreadsheet failed when all was done. */
  | { readonly code: "doneAnyway"; readonly because: string }
  | { readonly code: "busy" | "noWorkbook" | "notInLog" }
  | { readonly code: "notACount" | "noBox"; readonly found: string }
  | { readonly code: "unreadable"; readonly name: string }
  | { readonly code: "noStep" | "noColumn"; readonly task: string }
  | { readonly code: "noBatch"; readonly batch: string }
  | { readonly code: "twoBatches"; readonly batch: string; readonly rows: Rows }
  | {
      readonly code: "thereAlready";
      readonly task: string;
      readonly batch: string;
      /** Each with its header and what it holds. */
      readonly cells: Cells;
    }
  | { readonly code: "lineNotRead"; readonly row: string }
  /** A tab of the person's own has the name, but not the columns. */
  | { readonly code: "tabThere"; readonly tab: string; readonly columns: readonly string[] }
  | {
      readonly code: "taskGone";
      readonly task: string;
      readonly batch: string;
      readonly cells: Cells;
    }
  | { readonly code: "orderGone"; readonly order: string; readonly cells: Cells }
  | {
      readonly code: "columnsGone";
      readonly headers: readonly string[];
      readonly cells: Cells;
    }
  | {
      readonly code: "rowsAlike";
      readonly rows: Rows;
      readonly task: string;
      /** The batch, or the order. */
      readonly about: string;
    }
  | { readonly code: "tabMissing" | "noOrders" | "noCells" | "notOurs"; readonly tab: string }
  | { readonly code: "linesAbove"; readonly tab: string; readonly mendedBy: MendedBy };

type Cells = readonly string[];
/** Numbers of rows, from 1. */
type Rows = readonly string[];

/** What a person does once nothing is in the way of a tab any more. */
export type MendedBy = "again" | "refresh" | "setUp";

/** What the log keeps where the table has no column for it. */
export type KeptFact = "count" | "note";

/** What has to be asked before anything is written, or speaks against taking it back. */
export type Asked =
  | MeanwhileFault
  | LineAlready
  | { readonly code: "afterToday" | "beforeToday"; readonly day: string; readonly today: string }
  | {
      readonly code: "beforeStep";
      readonly step: string;
      readonly day: string;
      readonly earlier: string;
      readonly earlierDay: string;
    }
  | {
      readonly code: "moreThanBefore";
      readonly count: number;
      readonly before: number;
      readonly step: string;
      readonly batch: string;
    }
  | { readonly code: "notCounted"; readonly step: string; readonly batch: string }
  /** The table has no column for the step. @prop cell where its header would stand */
  | { readonly code: "newColumn"; readonly step: string; readonly cell: string }
  | TooLong
  | {
      /** The second where the log can't hold it whole, so that it can't be put back whole. */
      readonly code: "holdsAlready" | "holdsTooMuch";
      readonly header: string;
      readonly cell: string;
      readonly stands: string;
      readonly would: string;
    }
  | {
      readonly code: "columnLacks";
      readonly what: KeptFact;
      readonly task: string;
      readonly value: string;
    }
  | {
      readonly code: "nameAlready";
      readonly order: string;
      readonly row: string;
      readonly tab: string;
    }
  | {
      readonly code: "changedSince";
      readonly header: string;
      readonly cell: string;
      readonly stands: string;
      readonly wrote: string;
    }
  | {
      readonly code: "blankSince";
      readonly header: string;
      readonly cell: string;
      readonly wrote: string;
    }
  | {
      readonly code: "filledSince";
      readonly header: string;
      readonly cell: string;
      readonly stands: string;
    };

interface Line {
  readonly step: string;
  readonly batch: string;
  readonly row: string;
}

/** A line of a log that stands there for the same job. */
export type LineAlready =
  | (Line & { readonly code: "lineAlready"; readonly day: string })
  | (Line & { readonly code: "lineCounted"; readonly day: string; readonly count: number })
  | (Line & { readonly code: "lineUndated" });

export interface TooLong {
  readonly code: "tooLong";
  readonly what: "note" | "who" | "order" | "customer" | "variety";
  readonly length: number;
  readonly most: number;
}
