/**
 * The calls that the sidebar page may make, as types: what each is asked and what it answers.
 *
 * Only numbers, text, yes/no, null and lists and records of them pass between the page and the
 * script, so every day is ISO 8601 text ("2026-11-25") and "nothing there" is null, never missing.
 */

import type { DueStatus, LeftOut, ReadyRow } from "../core";
import type { WritingFault } from "../wording/writing-codes";
import type {
  AddOrderAnswer,
  AddOrderRequest,
  MakeTabAnswer,
  OrdersAnswer,
  OrderTabRequest,
  PlanOrderAnswer,
  PlanOrderRequest,
} from "./order-calls";
import type {
  ColumnsAnswer,
  ColumnsRequest,
  SetUpAnswer,
  SetUpRequest,
  SetUpState,
  TabCandidate,
  TimetableCandidate,
} from "./set-up-calls";
import type {
  CompareAnswer,
  CompareRequest,
  TakesAnswer,
  TakesRequest,
  TrendRow,
} from "./take-calls";
import type { MakeCrewAnswer, WorkAnswer, WorkRequest } from "./work-calls";
import type {
  LastWritesAnswer,
  RecordAnswer,
  RecordRequest,
  TakeBackAnswer,
  TakeBackRequest,
} from "./writing-calls";

export type { DueStatus, LeftOut, ReadyRow } from "../core";
export type { NamedText } from "./named-text";
export type {
  AddOrderAnswer,
  AddOrderRequest,
  MakeTabAnswer,
  OrderRow,
  OrdersAnswer,
  OrderTabRequest,
  PlannedOrderStep,
  PlanOrderAnswer,
  PlanOrderRequest,
} from "./order-calls";
export type {
  ColumnChoice,
  ColumnGuess,
  ColumnsAnswer,
  ColumnsRequest,
  ComparableColumn,
  SetUpAnswer,
  SetUpRequest,
  SetUpState,
  TabCandidate,
  TimetableCandidate,
} from "./set-up-calls";
export type {
  AloneRow,
  CompareAnswer,
  ComparedRow,
  CompareRequest,
  RatedName,
  ReasonRow,
  TakesAnswer,
  TakesRequest,
  TakesRow,
  TrendRow,
} from "./take-calls";
export type {
  MakeCrewAnswer,
  PlannedDay,
  PlannedPart,
  WorkAnswer,
  WorkOverload,
  WorkRequest,
} from "./work-calls";
export type {
  CellWritten,
  LastWrite,
  LastWritesAnswer,
  PlainValue,
  Question,
  RecordAnswer,
  RecordRequest,
  TakeBackAnswer,
  TakeBackRequest,
} from "./writing-calls";

/** What comes back from every call. A null in its place is a failure of the way between. */
export type CallResult<Answer> = (
  | { readonly ok: true; readonly data: Answer }
  /** One sentence for the person: what is wrong and what to do. */
  | { readonly ok: false; readonly error: string }
  /** The same where the page says it. */
  | { readonly ok: false; readonly fault: WritingFault }
) & {
  /** The script's version, which the page compares with its own. */
  readonly version: string;
};

/** What a call is given and gives. A request of null is a call without an argument. */
interface CallShape<Request, Answer> {
  readonly request: Request;
  readonly answer: Answer;
}

export interface SidebarCalls {
  readonly sidebarOpen: CallShape<null, OpenAnswer>;
  readonly sidebarToday: CallShape<DaysAheadRequest, TodayAnswer>;
  readonly sidebarAhead: CallShape<null, AheadAnswer>;
  readonly sidebarTakes: CallShape<TakesRequest, TakesAnswer>;
  readonly sidebarCompareTakes: CallShape<CompareRequest, CompareAnswer>;
  readonly sidebarCheck: CallShape<null, CheckAnswer>;
  readonly sidebarColumns: CallShape<ColumnsRequest, ColumnsAnswer>;
  readonly sidebarSetUp: CallShape<SetUpRequest, SetUpAnswer>;
  readonly sidebarRecord: CallShape<RecordRequest, RecordAnswer>;
  readonly sidebarTakeBack: CallShape<TakeBackRequest, TakeBackAnswer>;
  readonly sidebarLastWrites: CallShape<null, LastWritesAnswer>;
  readonly sidebarSelect: CallShape<SelectRequest, SelectAnswer>;
  readonly sidebarCalendar: CallShape<DaysAheadRequest, CalendarAnswer>;
  readonly sidebarWork: CallShape<WorkRequest, WorkAnswer>;
  readonly sidebarMakeCrew: CallShape<null, MakeCrewAnswer>;
  readonly sidebarOrders: CallShape<null, OrdersAnswer>;
  readonly sidebarPlanOrder: CallShape<PlanOrderRequest, PlanOrderAnswer>;
  readonly sidebarAddOrder: CallShape<AddOrderRequest, AddOrderAnswer>;
  readonly sidebarOrderTab: CallShape<OrderTabRequest, MakeTabAnswer>;
  readonly sidebarMakeOrders: CallShape<null, MakeTabAnswer>;
}

export type SidebarCallName = keyof SidebarCalls;
export type RequestOf<Name extends SidebarCallName> = SidebarCalls[Name]["request"];
export type AnswerOf<Name extends SidebarCallName> = SidebarCalls[Name]["answer"];

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
}

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
  /** Whether plants are counted at this step. */
  readonly counted: boolean;
  /** The header in the person's own table that the count goes under; null where there is none. */
  readonly countHeader: string | null;
  /** The same for the day; null where the step can't be recorded. */
  readonly dayHeader: string | null;
}

export interface AheadAnswer {
  readonly rows: readonly ReadyRow[];
  readonly batches: readonly AheadBatch[];
  readonly remarks: readonly LeftOut[];
}

export interface AheadBatch {
  readonly batch: string;
  readonly variety: string;
  readonly place: string;
  /** The month that counts it, as "2026-11". */
  readonly month: string;
  /** Ready already, and not yet all dispatched. */
  readonly isReady: boolean;
  readonly readyFrom: string | null;
  readonly readyLikely: string | null;
  readonly readyBy: string | null;
  readonly fewest: number | null;
  readonly likely: number | null;
  readonly most: number | null;
}

export interface CheckAnswer {
  /** Costliest first. */
  readonly rows: readonly CheckRow[];
  /** One sentence that counts the rows used and left out. */
  readonly tally: string;
}

export interface CheckRow {
  /** Row of the records tab, from 1; null where the trouble is about a column or the whole table. */
  readonly row: number | null;
  /** Header as it stands in the sheet; empty where the trouble is about a row. */
  readonly column: string;
  readonly found: string;
  readonly trouble: string;
  readonly whatHappens: string;
  readonly whatToDo: string;
  /** 1 a row is lost, 2 a column, 3 a cell, 4 used but in doubt, 5 used in a reading that is said. */
  readonly cost: 1 | 2 | 3 | 4 | 5;
}

export interface SelectRequest {
  /** Row of the records tab, from 1; null selects the column's header. */
  readonly row: number | null;
  /** Header as it stands in the sheet; empty selects the whole row. */
  readonly column: string;
}

export interface SelectAnswer {
  /** Tab and cell, as "Records!N12". */
  readonly selected: string;
}

export interface CalendarAnswer {
  readonly fileName: string;
  /** The file's text, RFC 5545. */
  readonly text: string;
}
