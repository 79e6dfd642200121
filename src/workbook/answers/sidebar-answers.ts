import { ORDER_HEADER } from "../../core";
import type { AnswerOf, RequestOf, SidebarCallName } from "../../wire/calls";
import { addOrder } from "../orders/add-order";
import { makeOrderTab } from "../orders/order-plan-tab";
import { ordersAnswer } from "../orders/orders-answer";
import { NAMED_ON_PAGE, orderPlanned } from "../orders/planned-order";
import { columnGuesses } from "../set-up/column-guesses";
import { setUp } from "../set-up/set-up";
import { lastWrites } from "../tables/last-writes";
import { makeOrdersTab } from "../tables/orders-tab";
import { takeBack } from "../tables/take-back";
import { recordTask } from "../tasks/record-task";
import { makeCrewTab } from "../work/crew-tabs";
import { plannedDays } from "../work/planned-days";
import { aheadAnswer } from "./ahead";
import { checkAnswer, selectAnswer } from "./check";
import {
  anyText,
  anyTextOrNull,
  entered,
  type Fields,
  listOf,
  numberEntered,
  numberOrNull,
  record,
  textIfSent,
  textOrNull,
  textOrUsual,
  texts,
  wholeNumber,
  yes,
  yesOrNoIfSent,
} from "./fields";
import { openAnswer } from "./open";
import { compareAnswer, takesAnswer } from "./takes";
import { calendarAnswer, todayAnswer } from "./today";

/** How the request of a call is read, and what answers it. */
interface Answerer<Name extends SidebarCallName> {
  readonly asked: Fields<RequestOf<Name>>;
  answer(request: RequestOf<Name>): AnswerOf<Name>;
}

const DAYS_AHEAD = { daysAhead: wholeNumber({ least: 0, most: 3660, usual: 7 }) };

const columnChoices = listOf(record({ header: anyText, readAs: anyTextOrNull }));

const ORDER_PLANNED = {
  variety: entered("Variety"),
  wanted: numberEntered,
  by: entered(NAMED_ON_PAGE.readyBy),
  assurance: numberEntered,
  method: entered("Method"),
  harvest: entered("Harvest months"),
};

/**
 * Everything that the page may ask of the script. This list is the only one: the names that the page
 * may call follow from it, in the built file and in the tests.
 */
export const sidebarAnswers: { readonly [Name in SidebarCallName]: Answerer<Name> } = {
  sidebarOpen: { asked: null, answer: openAnswer },
  sidebarToday: { asked: DAYS_AHEAD, answer: todayAnswer },
  sidebarAhead: { asked: null, answer: aheadAnswer },
  sidebarTakes: { asked: { by: textOrUsual }, answer: takesAnswer },
  sidebarCompareTakes: {
    asked: { by: textOrUsual, evenFor: textOrUsual, period: textOrUsual },
    answer: compareAnswer,
  },
  sidebarCheck: { asked: null, answer: checkAnswer },
  sidebarColumns: {
    asked: { tab: anyText, timetable: textOrNull, columns: columnChoices },
    answer: columnGuesses,
  },
  sidebarSetUp: {
    asked: {
      tab: anyText,
      columns: columnChoices,
      words: listOf(record({ word: anyText, name: anyTextOrNull, notSame: yes })),
      timetable: textOrNull,
      methods: texts,
      compareBy: textIfSent,
      initials: yesOrNoIfSent,
    },
    answer: setUp,
  },
  sidebarRecord: {
    asked: {
      batch: anyText,
      task: anyText,
      day: anyText,
      count: numberOrNull,
      who: anyText,
      note: anyText,
      sure: texts,
    },
    answer: recordTask,
  },
  sidebarTakeBack: { asked: { logId: anyText }, answer: takeBack },
  sidebarLastWrites: { asked: null, answer: lastWrites },
  sidebarSelect: { asked: { row: numberOrNull, column: anyText }, answer: selectAnswer },
  sidebarCalendar: { asked: DAYS_AHEAD, answer: calendarAnswer },
  sidebarWork: {
    asked: {
      days: wholeNumber({ least: 1, most: Number.POSITIVE_INFINITY, usual: 14 }),
      initials: yes,
    },
    answer: plannedDays,
  },
  sidebarMakeCrew: { asked: null, answer: makeCrewTab },
  sidebarOrders: { asked: null, answer: ordersAnswer },
  sidebarPlanOrder: { asked: ORDER_PLANNED, answer: orderPlanned },
  sidebarAddOrder: {
    asked: {
      order: entered(ORDER_HEADER.order),
      customer: entered(ORDER_HEADER.customer),
      variety: entered(ORDER_HEADER.variety),
      wanted: numberEntered,
      by: entered(NAMED_ON_PAGE.readyBy),
      sure: texts,
    },
    answer: addOrder,
  },
  sidebarOrderTab: { asked: { ...ORDER_PLANNED, order: entered("Order") }, answer: makeOrderTab },
  sidebarMakeOrders: { asked: null, answer: makeOrdersTab },
};
