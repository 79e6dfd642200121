import {
  foldName,
  isoDay,
  leftOutRemark,
  ORDER_HEADER,
  type Order,
  orderOutlooks,
  USUAL_ASSURANCE,
  usualMethod,
  writtenVarieties,
} from "../core";
import type { OrderRow, OrdersAnswer } from "./order-calls";
import { ordersNow } from "./orders-tab";
import type { RecordsNow } from "./records-tab";
import { sidebarWords } from "./sidebar-words";

/** The outlook of every open order, and what a form for a new one offers. */
export function ordersAnswer(now: RecordsNow): OrdersAnswer {
  const { records, timetable, asOf, door } = now;
  const table = ordersNow(now);
  const orders = table === null ? null : door.orders(table.values, asOf);
  const open = orders?.open ?? [];
  const outlooks =
    orders === null || open.length === 0
      ? []
      : orderOutlooks({ orders, records, timetable, asOf, assurance: USUAL_ASSURANCE });
  const usual = usualMethod(timetable, records.batches)?.name;
  const names = timetable.methods.map(({ name }) => name).filter((name) => name !== usual);
  const remarks = [orders?.remark ?? null, leftOutRemark(records)].filter((one) => one !== null);
  return {
    asOf: isoDay(asOf),
    ordersTab: table?.sheet.getName() ?? null,
    orderHeader: ORDER_HEADER,
    assurance: USUAL_ASSURANCE,
    orders: outlooks.map(
      ({ order, fullBy, ...expected }): OrderRow => ({
        order: order.name,
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
    remark: remarks.length === 0 ? null : sidebarWords(remarks.join(". ")),
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
