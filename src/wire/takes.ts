/** What the sidebar asks about takes, and what it is told. */

import type { ChartReading, FairReading, ReasonReading, TakesRemark } from "../core";
import type { CallShape } from "./call-shape";
import type { NamedText } from "./named-text";

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

/** The takes of a group. Shares are 0 to 1; null where nothing can be said. */
interface RatedRow {
  /** A text for each column that groups are made of. */
  readonly group: readonly NamedText[];
  readonly grafted: number;
  readonly taken: number;
  readonly rate: number | null;
  readonly from: number | null;
  readonly to: number | null;
}

export interface TakesRow extends RatedRow {
  /** Batches whose takes are counted. */
  readonly batches: number;
  /** How much more batches of a group differ than by chance alone, which is 1. */
  readonly spread: number | null;
  readonly remarks: readonly TakesRemark[];
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
  readonly compared: readonly ComparedRow[];
  /** Groups that nobody else stands beside, each with where that is so. */
  readonly alone: readonly AloneRow[];
  /** How many batches stand alone: counted, but not judged. */
  readonly aloneBatches: number;
  /** What is not counted. */
  readonly remarks: readonly TakesRemark[];
  readonly period: string;
  readonly trend: readonly TrendRow[];
  readonly reasons: readonly ReasonRow[];
  readonly reasonsRemarks: readonly TakesRemark[];
}

export interface ComparedRow extends RatedRow {
  readonly expected: number | null;
  readonly evened: number | null;
  readonly reading: FairReading;
}

export interface AloneRow {
  readonly group: readonly NamedText[];
  readonly stratum: readonly NamedText[];
}

export interface TrendRow {
  /** As "2026-W48", "2026-11" or "2026-Q4". */
  readonly period: string;
  /** Whether takes of it are still to be counted. */
  readonly isOpen: boolean;
  readonly grafted: number | null;
  readonly rate: number | null;
  readonly usual: number | null;
  readonly low: number | null;
  readonly high: number | null;
  /** Null where nothing is counted yet. */
  readonly reading: ChartReading | null;
}

export interface ReasonRow {
  readonly column: string;
  readonly groups: number;
  /** A share, 0 to 1; null where there are too few. */
  readonly explained: number | null;
  /** Null where no link is clear. */
  readonly best: RatedName | null;
  readonly worst: RatedName | null;
  readonly reading: ReasonReading;
}

export interface RatedName {
  readonly name: NamedText;
  /** A share, 0 to 1. */
  readonly takeRate: number;
}

export interface TakesCalls {
  readonly sidebarTakes: CallShape<TakesRequest, TakesAnswer>;
  readonly sidebarCompareTakes: CallShape<CompareRequest, CompareAnswer>;
}
