import { ORDER_HEADER } from "../../core";
import type { OrdersCalls } from "../../wire/orders";
import { addOrder } from "../orders/add-order";
import { makeOrderTab } from "../orders/order-plan-tab";
import { ordersAnswer } from "../orders/orders-answer";
import { NAMED_ON_PAGE, orderPlanned } from "../orders/planned-order";
import { makeOrdersTab } from "../tables/orders-tab";
import type { AnswerersOf } from "./answerer";
import { entered, numberEntered, texts } from "./fields";

const ORDER_PLANNED = {
  variety: entered("Variety"),
  wanted: numberEntered,
  by: entered(NAMED_ON_PAGE.readyBy),
  assurance: numberEntered,
  method: entered("Method"),
  harvest: entered("Harvest months"),
};

export const ordersCalls: AnswerersOf<OrdersCalls> = {
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
