import type { PartRemark, Proof } from "../core";
import type { CallShape } from "./call-shape";
import type { MadeTab } from "./made-tab";

/** What the sidebar asks about the coming work, and what it is told. Days are ISO text, but in codes. */

export interface WorkRequest {
  /** How many days from the as-of day on, 1 to 366. */
  readonly days: number;
  /** Whether persons are called by their initials; by their names if left out. */
  readonly initials?: boolean;
}

export interface WorkAnswer {
  readonly asOf: string;
  /** The tab with the persons; null where there is none, and then nothing is planned. */
  readonly crewTab: string | null;
  /** The tab with the closed days; null where there is none. */
  readonly closedTab: string | null;
  /** The columns that a tab of persons has. */
  readonly crewHeader: readonly string[];
  readonly persons: readonly string[];
  readonly days: readonly PlannedDay[];
  /** Stretches of days that ask for more than is there. */
  readonly overloads: readonly WorkOverload[];
  /** By day and person. */
  readonly parts: readonly PlannedPart[];
  /** Tasks and parts that are set into none of the days. */
  readonly unassigned: readonly PlannedPart[];
  /** What could not be used, as the page shows it; null where all was. */
  readonly remark: string | null;
}

/** A stretch of days that asks for more than is there, with its sum. */
export type WorkOverload = Proof;

export interface PlannedDay {
  readonly day: string;
  readonly isClosed: boolean;
  /** Hours of the tasks that are set into it. */
  readonly asked: number;
  /** Hours that the persons have. */
  readonly there: number;
  /** The same by person, in the order of the persons. */
  readonly hands: readonly number[];
  /** Whether it lies in a stretch of too much. */
  readonly isOverloaded: boolean;
}

export interface PlannedPart {
  /** Null for what is set into none of the days. */
  readonly day: string | null;
  readonly task: string;
  readonly batch: string;
  /** Empty where the records name none. */
  readonly place: string;
  readonly plants: number | null;
  readonly hours: number | null;
  /** Null for what nobody does, and for reminders that ask for no known hours. */
  readonly person: string | null;
  readonly by: string;
  readonly remarks: readonly PartRemark[];
  /** Whether plants are counted at this step. */
  readonly counted: boolean;
  /** Empty where there is none. */
  readonly caution: string;
}

export interface WorkCalls {
  readonly sidebarWork: CallShape<WorkRequest, WorkAnswer>;
  readonly sidebarMakeCrew: CallShape<null, MadeTab>;
}
