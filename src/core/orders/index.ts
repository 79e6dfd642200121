/** Orders planned back to their start, and what stands set aside for them. */

export type { Amount } from "../amounts";
export { type HarvestMonths, readHarvestMonths } from "./harvest-months";
export { type NearCustomers, nearCustomers } from "./near-customers";
export type { Order, Orders } from "./order";
export { ORDER_COLUMNS, ORDER_HEADER, type OrderField } from "./order-columns";
export {
  OUTLOOK_COLUMNS,
  type OutlookOfOrders,
  orderOutlooks,
  outlookOfOrders,
} from "./order-outlooks";
export type {
  OrderAction,
  OrderRowTroubles,
  OrdersRemark,
  OrderTrouble,
  PlanFact,
  PlanWarning,
} from "./order-remark";
export type { OutlookQuestion } from "./outlook-question";
export { PLAN_COLUMNS, type PlannedOrder, type PlanQuestion, plannedOrder } from "./planned-order";
export { orderTable, readOrders } from "./read-orders";
export { USUAL_ASSURANCE } from "./usual-assurance";
export { methodOfCrop, varietyAsTold, writtenVarieties } from "./wishes";
