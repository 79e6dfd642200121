/** What the sidebar asks about the due tasks, and what it is told. Days are ISO text. */

import type { DueStatus, LeftOut } from "../core";
import type { CallShape } from "./call-shape";
import type { TrendRow } from "./takes";

export interface DaysAheadRequest {
  /** Whole days, 0 or more. */
  readonly daysAhead: number;
}

export interface TodayAnswer {
  readonly asOf: string;
  /** Soonest first. */
  readonly tasks: readonly DueTask[];
  readonly remarks: readonly LeftOut[];
  /** The last month's takes, for the round sheet; null where none are counted. */
  readonly takes: TrendRow | null;
}

export interface DueTask {
  readonly batch: string;
  /** Empty where the records name none. */
  readonly place: string;
  readonly task: string;
  /** Null when never counted. */
  readonly plants: number | null;
  /** Whether nobody counted them so. */
  readonly isEstimate: boolean;
  readonly doOn: string;
  readonly from: string;
  readonly by: string;
  readonly status: DueStatus;
  /** 0 unless late. */
  readonly daysLate: number;
  /** Person-hours; null when plants or work rate are not known. */
  readonly hours: number | null;
  /** Empty where there is none. */
  readonly caution: string;
  /** Optional, and never late: it may be left undone without a word. */
  readonly isLook: boolean;
  /** Whether its usual day is still to come. */
  readonly canWait: boolean;
  /** Whether plants are counted at this step. */
  readonly counted: boolean;
  /** The header in the person's own table that the count goes under; null where there is none. */
  readonly countHeader: string | null;
  /** The same for the day; null where the step can't be recorded. */
  readonly dayHeader: string | null;
}

export interface CalendarAnswer {
  readonly fileName: string;
  /** The file's text, RFC 5545. */
  readonly text: string;
}

export interface TodayCalls {
  readonly sidebarToday: CallShape<DaysAheadRequest, TodayAnswer>;
  readonly sidebarCalendar: CallShape<DaysAheadRequest, CalendarAnswer>;
}
