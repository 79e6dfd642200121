import { shortened } from "../cells";
import { nearestNames } from "../names";
import type { PassageAnyDay, Projection } from "../projection";
import { type Method, type Timetable, usualMethod } from "../timetable";
import type { OrderFillings } from "./draw-fillings";
import type { Order } from "./order";
import type { OrderAction } from "./order-remark";
import type { OutlookQuestion } from "./outlook-question";
import { planOrder } from "./plan-order";
import { atLeast, shortAt } from "./read-fillings";
import { batchCaller, grants, type KnownNames, unknownWishes, type Wish, wishesOf } from "./wishes";

export interface Nursery extends OutlookQuestion {
  readonly projection: Projection;
  readonly names: KnownNames;
  /** Of batches that are not closed, each once. */
  readonly crops: readonly string[];
  /** The ways of plants that are planned; added to by each order. */
  readonly planned: PassageAnyDay[];
}

/**
 * What to do for an order. Plants to be grafted are planned as by ORDER_PLAN for what is lacking:
 * that no more is lacking, and that the new plants make it good, each hold with the square root of
 * the assurance, so that both hold with the assurance. Nothing is planned from a name that may be a slip.
 */
export function whatToDo({
  order,
  filling,
  chance,
  nursery: { timetable, asOf, assurance, projection, names, crops, planned },
}: {
  readonly order: Order;
  readonly filling: OrderFillings;
  readonly chance: number;
  readonly nursery: Nursery;
}): OrderAction {
  const wishes = wishesOf(order, names.varieties);
  if (filling.left === 0) return { code: "all-delivered" };
  if (wishes.length === 0 && crops.length > 1) return { code: "which-crop", crops };
  if (chance >= assurance) return { code: "fine" };
  const slip = slipIn(order, wishes, names);
  if (slip !== null) return slip;
  if (order.by < asOf) {
    return { code: atLeast(filling.fullOn, assurance) <= asOf ? "deliver-now" : "too-late" };
  }
  const root = Math.sqrt(assurance);
  const wish = firstKnown(wishes, names);
  const variety = (wish?.variety && names.varieties.get(wish.variety)) ?? "";
  const method = methodFor(wishes, { projection, timetable });
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
  planned.push({ method, after: 0, upTo: method.ready, variety });
  return {
    code: graft === undefined ? "start-more" : "graft-more",
    plants: start.plants,
    variety: shortened(variety || (wish?.written ?? "")),
    by: doBy,
  };
}

/**
 * The names that no batch has, where they are all that is ordered, or where one of them may be a slip.
 */
function slipIn(order: Order, wishes: readonly Wish[], names: KnownNames): OrderAction | null {
  const unknown = unknownWishes(wishes, names);
  const isAll = unknown.length === wishes.length;
  if (unknown.length === 0) return null;
  const known = [
    ...names.varieties.values(),
    ...new Set(names.called.flatMap(({ crops }) => crops)),
  ];
  const meant = unknown.map((wish) => ({
    wish,
    near: nearestNames(shortened(wish.variety ?? wish.crops.join(" ")), known),
  }));
  const slips = isAll ? meant : meant.filter(({ near }) => near.length > 0);
  if (slips.length === 0) return null;
  const written = slips.map(({ wish }) => wish.written);
  return {
    code: "no-such-variety",
    variety: shortened(isAll ? order.variety || (order.crop ?? "") : written.join(", ")),
    nearest: [...new Set(slips.flatMap(({ near }) => near))],
  };
}

/** The first of what is ordered that a batch is; where no batch is any, the first. */
function firstKnown(wishes: readonly Wish[], names: KnownNames): Wish | undefined {
  const unknown = unknownWishes(wishes, names);
  return wishes.find((wish) => !unknown.includes(wish)) ?? wishes[0];
}

/** The crops of what stands. */
export function cropsStanding({ batches }: Projection): readonly string[] {
  const calledOf = batchCaller();
  const crops = batches.flatMap(({ batch, state }) =>
    state?.open ? calledOf(batch, state.method).crops.slice(0, 1) : [],
  );
  return [...new Set(crops)].sort();
}

/** The method by which most batches were raised that will do for an order; else by which most were. */
function methodFor(
  wishes: readonly Wish[],
  {
    projection: { batches },
    timetable,
  }: { readonly projection: Projection; readonly timetable: Timetable },
): Method | null {
  const calledOf = batchCaller();
  const own = batches.filter(({ batch, state }) =>
    grants(wishes, calledOf(batch, state?.method ?? null)),
  );
  return usualMethod(
    timetable,
    (own.length > 0 ? own : batches).map(({ batch }) => batch),
  );
}
