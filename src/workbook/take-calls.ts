/** What the sidebar asks about takes, and what it is told. */

export interface TakesRequest {
  /** One of the columns offered. */
  readonly by: string;
}

export interface TakesAnswer {
  readonly by: string;
  /** What takes can be grouped by. */
  readonly columns: readonly string[];
  readonly rows: readonly TakesRow[];
}

export interface TakesRow {
  readonly group: string;
  /** Batches whose takes are counted. */
  readonly batches: number;
  readonly grafted: number;
  readonly taken: number;
  /** Shares, 0 to 1; null where nothing is counted yet. */
  readonly rate: number | null;
  readonly from: number | null;
  readonly to: number | null;
  /** How much more batches of a group differ than by chance alone, which is 1. */
  readonly spread: number | null;
  readonly remark: string | null;
}

export interface CompareRequest {
  /** A column offered; empty for the usual one. */
  readonly by: string;
  /** Columns joined with "+"; empty for the usual ones. */
  readonly evenFor: string;
  /** "week", "month" or "quarter". */
  readonly period: string;
}

export interface CompareAnswer {
  readonly by: string;
  readonly evenFor: string;
  /** What can be compared. */
  readonly columns: readonly string[];
  /** What can be evened for, singly or two together. */
  readonly evenFors: readonly string[];
  /** The column that names people; null when there is none. */
  readonly people: string | null;
  readonly compared: readonly ComparedRow[];
  /** Strata with nobody to compare with, and what is not counted. */
  readonly remark: string | null;
  readonly period: string;
  readonly trend: readonly TrendRow[];
  readonly reasons: readonly ReasonRow[];
  readonly reasonsRemark: string | null;
}

/** Shares are 0 to 1; null where nothing can be said. */
export interface ComparedRow {
  readonly group: string;
  readonly grafted: number;
  readonly taken: number;
  readonly rate: number | null;
  readonly expected: number | null;
  readonly evened: number | null;
  readonly from: number | null;
  readonly to: number | null;
  readonly reading: string;
}

export interface TrendRow {
  /** A period whose takes are not all counted says so. */
  readonly period: string;
  readonly grafted: number | null;
  readonly rate: number | null;
  readonly usual: number | null;
  readonly low: number | null;
  readonly high: number | null;
  /** Empty where nothing is counted yet. */
  readonly reading: string;
}

export interface ReasonRow {
  readonly column: string;
  readonly groups: number;
  readonly explained: number | null;
  readonly best: string;
  readonly worst: string;
  readonly reading: string;
}
