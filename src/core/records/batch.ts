import type { CivilDay } from "../dates";
import type { BatchFact } from "../words";

/** Plants that left a batch by a line of their own; the day is null where none is written. */
export interface PlantsGone {
  readonly plants: number;
  readonly day: CivilDay | null;
  /** Why they were culled; empty where nothing is written. */
  readonly reason: string;
}

/** Plants raised together, as the records tell it. Text that was not given is empty. */
export interface Batch {
  /** The batch's own row in the range, from 1; for a batch known from a log only, its first line. */
  readonly row: number;
  /** Which of the range's tables the row stands in, from 0. */
  readonly table: number;
  readonly name: string;
  readonly fromLot: string;
  readonly variety: string;
  readonly rootstock: string;
  readonly crop: string;
  readonly method: string;
  readonly place: string;
  readonly grafter: string;
  readonly scionSource: string;
  readonly culled: number | null;
  /** Those of them that stand in lines of a log; left out where none do. */
  readonly cullings?: readonly PlantsGone[];
  /** Of those, plants culled after the day of the last count, so that the count is not without them. */
  readonly culledSinceCount?: number;
  readonly dispatched: number | null;
  /** Plants that other batches were made of; see lots.ts. */
  readonly given: number;
  /** Those that went to batches of their own, with the first day of each; left out where none did. */
  readonly givings?: readonly PlantsGone[];
  /** Of those, plants that left before the last count, so that the count is without them. */
  readonly givenBeforeCount: number;
  /** Plants that came from another batch by a line of their own; null when none. */
  readonly received: number | null;
  readonly closed: boolean;
  /** Null where it is not, or nobody wrote when. */
  readonly closedOn: CivilDay | null;
  /** Day of each step, in the order of the records' stepKeys; null where not recorded. */
  readonly days: readonly (CivilDay | null)[];
  /** Plants counted at each step, in the same order; null where not counted, which is not 0. */
  readonly counts: readonly (number | null)[];
  /** Keys of the steps that are said not to be done. */
  readonly notDone: readonly string[];
}

/** The facts that are plain text. */
export const TEXT_FACTS = [
  "fromLot",
  "variety",
  "rootstock",
  "crop",
  "method",
  "place",
  "grafter",
  "scionSource",
] as const;

export type TextFact = (typeof TEXT_FACTS)[number];

/** The facts that name something: each name is one, however it is spelt. */
export const NAMED_FACTS = [
  "variety",
  "rootstock",
  "method",
  "place",
  "grafter",
  "scionSource",
] as const satisfies readonly TextFact[];

/** Of those, the ones that may name nobody; a method that nobody knows is no blank one. */
export const NAMES: ReadonlySet<BatchFact> = new Set(
  NAMED_FACTS.filter((fact) => fact !== "method"),
);
