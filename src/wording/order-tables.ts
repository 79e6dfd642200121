import {
  type Answer,
  type OrdersRemark,
  OUTLOOK_COLUMNS,
  type OutlookOfOrders,
  PLAN_COLUMNS,
  type PlannedOrder,
} from "../core";
import { headers } from "../sentences/made/order-columns";
import * as text from "../sentences/made/orders";
import { needsWords, planFact, planWarning } from "./order-plan";
import { orderAction, orderName, orderRows, someOrders, somePairs } from "./orders";
import { RECORDS_REMARKS, someBatches } from "./records";
import { type SentencesOf, sentenceOf, together, type Where } from "./sentence-of";
import { COLUMN_REMARKS } from "./small-tables";
import { tableOf } from "./table-of";

const REMARKS: SentencesOf<OrdersRemark> = {
  ...RECORDS_REMARKS,
  ...COLUMN_REMARKS,
  "orders-left-out": ({ rows }) => text.rowsLeftOut({ number: rows.length, rows: orderRows(rows) }),
  "crop-unknown": ({ batches }, where) =>
    text.cropUnknown({ batches: someBatches(batches, where) }),
  "varieties-unknown": ({ orders }) => text.varietiesUnknown({ orders: someOrders(orders) }),
  "customers-near": ({ pairs }) => text.customersNear({ pairs: somePairs(pairs) }),
  "variety-blank": ({ batches }, where) =>
    text.varietyBlank({ batches: someBatches(batches, where) }),
  "variety-near": ({ batches, ...names }, where) =>
    text.varietyNear({ ...names, batches: someBatches(batches, where) }),
  "orders-noted": ({ rows }) => text.noted({ rows: orderRows(rows) }),
};

/** Remarks beside orders as sentences; null where there are none. */
export function ordersRemarks(remarks: readonly OrdersRemark[], where: Where): string | null {
  return together(remarks.map((one) => sentenceOf(REMARKS, one, where)));
}

/** What becomes of the orders: a row an order. */
export function outlookTable({ outlooks, remarks }: OutlookOfOrders): Answer {
  return tableOf({
    columns: OUTLOOK_COLUMNS,
    headers: headers(),
    rows: outlooks.map(({ order, whatToDo, ...expected }) => ({
      cells: {
        ...expected,
        order: orderName(order.name),
        variety: order.variety || null,
        wanted: order.wanted,
        by: order.by,
        whatToDo: orderAction(whatToDo),
      },
    })),
    remark: ordersRemarks(remarks, "cell"),
  });
}

/** The plan of an order: a row a step, and a last one that adds up the needs. */
export function planTable({ steps, needs, remarks }: PlannedOrder): Answer {
  const all = { step: text.all(), doBy: null, plants: null, remarks: null };
  return tableOf({
    columns: PLAN_COLUMNS,
    headers: headers(),
    rows: [
      ...steps.map(({ step, doBy, plants, ...details }) => ({
        cells: {
          step: step.name,
          doBy,
          plants,
          needs: needsWords(details.needs) || null,
          remarks: together([...details.facts.map(planFact), ...details.warnings.map(planWarning)]),
        },
      })),
      ...(needs.length === 0 ? [] : [{ cells: { ...all, needs: needsWords(needs) } }]),
    ],
    remark: ordersRemarks(remarks, "cell"),
  });
}
