import type { Kinds } from "../answer";
import type { CivilDay } from "../dates";
import { comingBatches, generalShares, type PassageAnyDay, project, waysOf } from "../projection";
import { leftOutByMethod } from "../timetable";
import { drawFillings } from "./draw-fillings";
import { type Order, varietiesIn } from "./order";
import type { OrderAction, OrdersRemark } from "./order-remark";
import type { OutlookQuestion } from "./outlook-question";
import { atLeast, shortAt } from "./read-fillings";
import { cropsUnknown, unknownBesideKnown } from "./unknown-names";
import { varietiesInDoubt } from "./varieties-in-doubt";
import { cropsStanding, whatToDo } from "./what-to-do";
import { namesKnown } from "./wishes";

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
  const { outlooks, planned, projection } = outlooksBy(question);
  const { routes } = comingBatches(projection);
  return {
    outlooks,
    remarks: [
      ...orders.remarks,
      ...unknownBesideKnown(question),
      ...varietiesInDoubt(orders.open, records, varietiesIn(records)),
      ...cropsUnknown(question),
      ...leftOutByMethod(question),
      ...(outlooks.length === 0
        ? []
        : generalShares([...waysOf(routes), ...planned], projection.forecaster)),
    ],
  };
}

/** What is to be expected of every open order, in the order in which they are served. */
export function orderOutlooks(question: OutlookQuestion): readonly OrderOutlook[] {
  return outlooksBy(question).outlooks;
}

function outlooksBy(question: OutlookQuestion) {
  const { orders, records, timetable, asOf, assurance } = question;
  const projection = project({ records, timetable, asOf, level: assurance });
  const names = namesKnown(records, timetable);
  const planned: PassageAnyDay[] = [];
  const nursery = { ...question, projection, names, crops: cropsStanding(projection), planned };
  const known = names.varieties;
  const outlooks = drawFillings(projection, orders.open, { asOf, known }).map(
    (filling, index): OrderOutlook => {
      const order = orders.open[index] as Order;
      const { left, inTime, fullOn } = filling;
      const isPast = order.by < asOf && left > 0;
      const chance = isPast
        ? 0
        : inTime.filter((plants) => plants >= left).length / Math.max(1, inTime.length);
      const full = atLeast(fullOn, assurance);
      const action = whatToDo({ order, filling, chance, nursery });
      return {
        order,
        likely: atLeast(inTime, 0.5),
        chance,
        shortBy: shortAt(filling, assurance),
        fullBy: left === 0 || !Number.isFinite(full) ? null : (full as CivilDay),
        isFine: action.code === "all-delivered" || action.code === "fine",
        whatToDo: action,
      };
    },
  );
  return { outlooks, planned, projection };
}
