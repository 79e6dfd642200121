/** What the sidebar is told when it opens. */

import type { CallShape } from "./call-shape";
import type { SetUpState, TabCandidate, TimetableCandidate } from "./set-up";

export interface OpenAnswer {
  /** The workbook's name. */
  readonly workbook: string;
  /** Time zones by their IANA names where they differ, else null: days go by the workbook's. */
  readonly zones: { readonly workbook: string; readonly script: string } | null;
  /** A sentence for every live tab whose answer finds no room, with what mends it. */
  readonly inTheWay: readonly string[];
  /** Null until the tabs are made. */
  readonly setUp: SetUpState | null;
  /** Tabs that may hold the records, likeliest first. */
  readonly candidates: readonly TabCandidate[];
  /** Tabs of the person's own that hold a timetable, in the order of the workbook. */
  readonly timetables: readonly TimetableCandidate[];
  /** Names of the methods that are built in. */
  readonly methods: readonly string[];
  /** Tabs that are made on choice. */
  readonly moreTabs: readonly MoreTab[];
}

export interface MoreTab {
  readonly key: string;
  /** Its name. */
  readonly tab: string;
  /** What it answers. */
  readonly answers: string;
  readonly isThere: boolean;
}

export interface OpenCalls {
  readonly sidebarOpen: CallShape<null, OpenAnswer>;
}
