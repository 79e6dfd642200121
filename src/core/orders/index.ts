/** Orders planned back to their start, and what stands set aside for them. */

export type { Amount } from "../amounts";
export { type HarvestMonths, readHarvestMonths } from "./harvest-months";
export { type Order, type Orders, writtenVarieties } from "./order";
export { ORDER_HEADER, type OrderField } from "./order-columns";
export {
  OUTLOOK_COLUMNS,
  type OutlookOfOrders,
  type OutlookQuestion,
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
export { PLAN_COLUMNS, type PlannedOrder, type PlanQuestion, plannedOrder } from "./planned-order";
export { orderTable, readOrders } from "./read-orders";
export { USUAL_ASSURANCE } from "./usual-assurance";
