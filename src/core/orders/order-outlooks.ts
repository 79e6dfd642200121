import type { Kinds } from "../answer";
import { shortened } from "../cells";
import type { CivilDay } from "../dates";
import { foldName, nearestNames } from "../names";
import { type Projection, project } from "../projection";
import type { Records } from "../records";
import { leftOutByMethod, type Method, type Timetable, usualMethod } from "../timetable";
import { drawFillings, type OrderFillings } from "./draw-fillings";
import {
  firstVariety,
  type KnownVarieties,
  type Order,
  type Orders,
  unknownVarieties,
  varietiesIn,
  varietiesOf,
} from "./order";
import type { OrderAction, OrdersRemark } from "./order-remark";
import { planOrder } from "./plan-order";
import { varietiesInDoubt } from "./varieties-in-doubt";

/** The columns of an order's row. */
export const OUTLOOK_COLUMNS = {
  order: "text",
  variety: "text",
  wanted: "count",
  by: "day",
  likely: "count",
  chance: "share",
  shortBy: "count",
  fullBy: "day",
  whatToDo: "text",
} as const satisfies Kinds;

export interface OutlookQuestion {
  readonly orders: Orders;
  readonly records: Records;
  readonly timetable: Timetable;
  readonly asOf: CivilDay;
  /** Strictly between 0 and 1. */
  readonly assurance: number;
}

/** What is to be expected of one order. Plants are those still to be delivered. */
export interface OrderOutlook {
  readonly order: Order;
  readonly likely: number;
  /** Chance that all are ready by the order's day, 0 to 1. */
  readonly chance: number;
  /** With the assurance no more than these are lacking on the order's day. */
  readonly shortBy: number;
  /** The order's day, or the first after it by which, with the assurance, all are ready; null for never. */
  readonly fullBy: CivilDay | null;
  readonly whatToDo: OrderAction;
  /** Whether nothing needs to be done: delivered, or as sure as is asked. */
  readonly isFine: boolean;
}

export interface OutlookOfOrders {
  readonly outlooks: readonly OrderOutlook[];
  readonly remarks: readonly OrdersRemark[];
}

/** The outlook of every open order, with what could not be used. */
export function outlookOfOrders(question: OutlookQuestion): OutlookOfOrders {
  const { orders, records } = question;
  return {
    outlooks: orderOutlooks(question),
    remarks: [
      ...orders.remarks,
      ...unknownBesideKnown(question),
      ...varietiesInDoubt(orders.open, records, varietiesIn(records)),
      ...leftOutByMethod(question),
    ],
  };
}

/** What is to be expected of every open order, in the order in which they are served. */
export function orderOutlooks(question: OutlookQuestion): readonly OrderOutlook[] {
  const { orders, records, timetable, asOf, assurance } = question;
  const projection = project({ records, timetable, asOf, level: assurance });
  const known = varietiesIn(records);
  return drawFillings(projection, orders.open, { asOf, known }).map((filling, index) => {
    const order = orders.open[index] as Order;
    const { left, inTime, fullOn } = filling;
    const isPast = order.by < asOf && left > 0;
    const chance = isPast
      ? 0
      : inTime.filter((plants) => plants >= left).length / Math.max(1, inTime.length);
    const full = atLeast(fullOn, assurance);
    return {
      order,
      likely: atLeast(inTime, 0.5),
      chance,
      shortBy: shortAt(filling, assurance),
      fullBy: left === 0 || !Number.isFinite(full) ? null : (full as CivilDay),
      isFine: left === 0 || chance >= assurance,
      whatToDo: whatToDo({ order, filling, chance, question: { ...question, projection, known } }),
    };
  });
}

/** The smallest drawn value that at least a share of the draws stay at or below. */
function atLeast(rising: readonly number[], share: number): number {
  return rising[Math.max(0, Math.ceil(share * rising.length - 1e-9) - 1)] ?? 0;
}

/** With this chance no more plants are lacking. */
function shortAt({ left, inTime }: OrderFillings, chance: number): number {
  const falling = Math.min(inTime.length - 1, Math.floor((1 - chance) * inTime.length + 1e-9));
  return left - (inTime[Math.max(0, falling)] ?? 0);
}

interface Nursery extends OutlookQuestion {
  readonly projection: Projection;
  readonly known: KnownVarieties;
}

/**
 * What to do for an order. Plants to be grafted are planned as by ORDER_PLAN for what is lacking:
 * that no more is lacking, and that the new plants make it good, each hold with the square root of
 * the assurance, so that both hold with the assurance.
 */
function whatToDo({
  order,
  filling,
  chance,
  question: { timetable, asOf, assurance, projection, known },
}: {
  readonly order: Order;
  readonly filling: OrderFillings;
  readonly chance: number;
  readonly question: Nursery;
}): OrderAction {
  if (filling.left === 0) return { code: "all-delivered" };
  if (chance >= assurance) return { code: "fine" };
  if (unknownVarieties(order, known).isAll) {
    const variety = shortened(order.variety);
    return {
      code: "no-such-variety",
      variety,
      nearest: nearestNames(variety, [...known.values()]),
    };
  }
  if (order.by < asOf) {
    return { code: atLeast(filling.fullOn, assurance) <= asOf ? "deliver-now" : "too-late" };
  }
  const root = Math.sqrt(assurance);
  const variety = firstVariety(order, known);
  const method = methodFor(order, { projection, timetable, known });
  if (method === null) return { code: "too-late" };
  const { steps } = planOrder({
    wanted: Math.max(1, shortAt(filling, root)),
    readyBy: order.by,
    method,
    variety,
    asOf,
    assurance: root,
    forecaster: projection.forecaster,
  });
  const graft = steps.find(({ step, onLine }) => onLine && step.key === "grafting");
  const start = graft ?? steps.find(({ onLine }) => onLine);
  const doBy = start?.doBy ?? null;
  if (start === undefined || doBy === null || doBy < asOf || start.plants === null) {
    // What stands may still fill it, if less surely than asked: that is what the chance says.
    return { code: "too-late-to-start" };
  }
  return {
    code: graft === undefined ? "start-more" : "graft-more",
    plants: start.plants,
    variety: shortened(variety),
    by: doBy,
  };
}

/** Orders that take a variety which no batch has, beside others. */
function unknownBesideKnown({ orders, records }: OutlookQuestion): readonly OrdersRemark[] {
  const known = varietiesIn(records);
  const unknown = orders.open.flatMap((order) => {
    const { names, isAll } = unknownVarieties(order, known);
    if (isAll || names.length === 0) return [];
    return [{ order: shortened(order.name), varieties: names.map(shortened) }];
  });
  return unknown.length === 0 ? [] : [{ code: "varieties-unknown", orders: unknown }];
}

/** The method by which most batches of an order's varieties were raised; else by which most were. */
function methodFor(
  order: Order,
  {
    projection: { batches },
    timetable,
    known,
  }: {
    readonly projection: Projection;
    readonly timetable: Timetable;
    readonly known: KnownVarieties;
  },
): Method | null {
  const accepted = varietiesOf(order, known);
  const own = batches.filter(({ batch }) => accepted.includes(foldName(batch.variety)));
  return usualMethod(
    timetable,
    (own.length > 0 ? own : batches).map(({ batch }) => batch),
  );
}
