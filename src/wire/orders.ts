import type { Amount, OrderAction, PlanFact, PlanWarning } from "../core";
import type { CallShape } from "./call-shape";
import type { MadeTab } from "./made-tab";
import type { RecordAnswer } from "./writing";

/** What the sidebar asks about orders, and what it is told. Days are ISO text, shares 0 to 1. */

export interface OrdersAnswer {
  readonly asOf: string;
  /** The tab with the orders; null where there is none. */
  readonly ordersTab: string | null;
  /** The columns that a tab of orders has. */
  readonly orderHeader: readonly string[];
  /** The chance that "by" and "short" hold with. */
  readonly assurance: number;
  /** Open orders, the earliest day first, as they are served. */
  readonly orders: readonly OrderRow[];
  /** Varieties in the records and the orders, for the form. */
  readonly varieties: readonly string[];
  /** Methods of the timetable, the usual one first. */
  readonly methods: readonly string[];
  /** What could not be used, in a sentence; null where all was. */
  readonly remark: string | null;
}

export interface OrderRow {
  readonly order: string;
  /** Empty where none is named. */
  readonly customer: string;
  /** As it is written, such as "Amberlow or Corvane"; empty where any will do. */
  readonly variety: string;
  readonly wanted: number;
  readonly delivered: number;
  readonly by: string;
  /** Of the plants still to be delivered, those likely to be set aside by the day. */
  readonly likely: number;
  /** Chance that it is filled in full by its day. */
  readonly chance: number;
  /** With the assurance no more than these are lacking on the day. */
  readonly shortBy: number;
  /** The day by which, with the assurance, it is full; null when there are too few. */
  readonly fullBy: string | null;
  readonly whatToDo: OrderAction;
  /** Whether nothing needs to be done about it. */
  readonly isFine: boolean;
}

export interface PlanOrderRequest {
  /** Empty for one like the others. */
  readonly variety: string;
  /** Plants, whole number, 1 or more. */
  readonly wanted: number;
  /** The day by which they are to be ready. */
  readonly by: string;
  /** Strictly between 0 and 1. */
  readonly assurance: number;
  /** Empty for the timetable's first. */
  readonly method: string;
  /** Months in which seed is harvested, such as "Oct-Mar, May-Aug"; empty when it does not matter. */
  readonly harvest: string;
}

export interface PlanOrderAnswer {
  readonly method: string;
  readonly steps: readonly PlannedOrderStep[];
  /** The needs of all steps together; none where none are known. */
  readonly needs: readonly Amount[];
  /** What in the records could not be used; null where all was. */
  readonly remark: string | null;
}

export interface PlannedOrderStep {
  readonly step: string;
  /** Null for a step that none of ready's days are counted from. */
  readonly doBy: string | null;
  /** Null when no start is large enough. */
  readonly plants: number | null;
  readonly needs: readonly Amount[];
  readonly facts: readonly PlanFact[];
  readonly warnings: readonly PlanWarning[];
  /** Whether its day is past already. */
  readonly isPast: boolean;
  /** Empty where there is none. */
  readonly caution: string;
}

export interface AddOrderRequest {
  /** The order's name; empty for one that is made from the others' number. */
  readonly order: string;
  /** May be empty. */
  readonly customer: string;
  /** May be empty. */
  readonly variety: string;
  readonly wanted: number;
  readonly by: string;
  /** Sentences of questions that were answered with yes. */
  readonly sure: readonly string[];
}

/** Of an order as of a task: what was written, or what is asked first. */
export type AddOrderAnswer = RecordAnswer;

export interface OrderTabRequest extends PlanOrderRequest {
  /** The order's name, for the tab's name; may be empty. */
  readonly order: string;
}

export interface OrdersCalls {
  readonly sidebarOrders: CallShape<null, OrdersAnswer>;
  readonly sidebarPlanOrder: CallShape<PlanOrderRequest, PlanOrderAnswer>;
  readonly sidebarAddOrder: CallShape<AddOrderRequest, AddOrderAnswer>;
  readonly sidebarOrderTab: CallShape<OrderTabRequest, MadeTab>;
  readonly sidebarMakeOrders: CallShape<null, MadeTab>;
}
