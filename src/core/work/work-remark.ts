import type { CivilDay } from "../dates";
import type { LeftOut } from "../records";
import type { RowTrouble } from "../tables";

/** What of the crew's table could not be used. */
export type CrewRemark =
  | RowTrouble
  /** No row gives the person hours, so that nothing can be planned with them. */
  | { readonly code: "no-hours-a-day"; readonly name: string };
/** Columns that hold something and are not read. */

/** What is to be said beside a plan of work. */
export type WorkRemark =
  | LeftOut
  | CrewRemark
  /** Tasks that may wait, and do in part or whole, until after the days shown. */
  | { readonly code: "planned-later"; readonly tasks: number; readonly end: CivilDay };

/** What is to be said of a task, or of a part of one. */
export type PartRemark =
  | { readonly code: "does-not-fit" }
  | { readonly code: "not-before"; readonly day: CivilDay }
  | { readonly code: "days-late"; readonly days: number }
  | { readonly code: "part-of"; readonly plants: number }
  | { readonly code: "no-plants" }
  | { readonly code: "not-counted" }
  | { readonly code: "no-work-rate" };

/** What is to be said beside what the work needs. */
export type NeedsRemark =
  | LeftOut
  /** Their needs are in no sum. */
  | { readonly code: "tasks-not-counted"; readonly tasks: number };
