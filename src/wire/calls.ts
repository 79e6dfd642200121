/**
 * The calls that the sidebar page may make, as types: what each is asked and what it answers.
 *
 * Only numbers, text, yes/no, null and lists and records of them pass between the page and the
 * script, so every day is ISO 8601 text ("2026-11-25") and "nothing there" is null, never missing.
 */

import type { WritingFault } from "../wording/writing-codes";
import type { AheadAnswer } from "./ahead";
import type { CheckAnswer, SelectAnswer, SelectRequest } from "./check";
import type { OpenAnswer } from "./open";
import type {
  AddOrderAnswer,
  AddOrderRequest,
  MakeTabAnswer,
  OrdersAnswer,
  OrderTabRequest,
  PlanOrderAnswer,
  PlanOrderRequest,
} from "./orders";
import type { ColumnsAnswer, ColumnsRequest, SetUpAnswer, SetUpRequest } from "./set-up";
import type { CompareAnswer, CompareRequest, TakesAnswer, TakesRequest } from "./takes";
import type { CalendarAnswer, DaysAheadRequest, TodayAnswer } from "./today";
import type { MakeCrewAnswer, WorkAnswer, WorkRequest } from "./work";
import type {
  LastWritesAnswer,
  RecordAnswer,
  RecordRequest,
  TakeBackAnswer,
  TakeBackRequest,
} from "./writing";

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
