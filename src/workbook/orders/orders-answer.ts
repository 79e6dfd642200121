import {
  foldName,
  isoDay,
  leftOutByMethod,
  ORDER_HEADER,
  type Order,
  outlookOfOrders,
  USUAL_ASSURANCE,
  usualMethod,
  writtenVarieties,
} from "../../core";
import type { OrderRow, OrdersAnswer } from "../../wire/orders";
import { ordersRemarks } from "../../wording/order-tables";
import { orderName } from "../../wording/orders";
import { recordsNow } from "../reading/records-tab";
import { ordersNow } from "../tables/orders-tab";

/** The outlook of every open order, and what a form for a new one offers. */
export function ordersAnswer(): OrdersAnswer {
  const now = recordsNow();
  const { records, timetable, asOf, door } = now;
  const table = ordersNow(now);
  const orders = table === null ? null : door.orders(table.values, asOf, records.words);
  const open = orders?.open ?? [];
  const { outlooks, remarks } =
    orders === null || open.length === 0
      ? { outlooks: [], remarks: [...(orders?.remarks ?? []), ...leftOutByMethod(now)] }
      : outlookOfOrders({ orders, records, timetable, asOf, assurance: USUAL_ASSURANCE });
  const usual = usualMethod(timetable, records.batches)?.name;
  const names = timetable.methods.map(({ name }) => name).filter((name) => name !== usual);
  return {
    asOf: isoDay(asOf),
    ordersTab: table?.sheet.getName() ?? null,
    orderHeader: Object.values(ORDER_HEADER),
    assurance: USUAL_ASSURANCE,
    orders: outlooks.map(
      ({ order, fullBy, ...expected }): OrderRow => ({
        order: orderName(order.name),
        customer: order.customer,
        variety: order.variety,
        wanted: order.wanted,
        delivered: order.delivered,
        by: isoDay(order.by),
        ...expected,
        fullBy: fullBy === null ? null : isoDay(fullBy),
      }),
    ),
    varieties: varieties(
      records.batches.map(({ variety }) => variety),
      open,
    ),
    methods: usual === undefined ? names : [usual, ...names],
    remark: ordersRemarks(remarks, "page"),
  };
}

/** By name, each as it is written first. */
function varieties(ofBatches: readonly string[], orders: readonly Order[]): readonly string[] {
  const written = new Map<string, string>();
  const add = (names: readonly string[]) => {
    for (const name of names) {
      const key = foldName(name);
      if (key !== "" && !written.has(key)) written.set(key, name);
    }
  };
  add(ofBatches);
  for (const order of orders) add(writtenVarieties(order, new Map(written)));
  return [...written.keys()].sort().map((key) => written.get(key) as string);
}
