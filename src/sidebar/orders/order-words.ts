import * as text from "../../sentences/made/orders-page";
import type { OrderRow } from "../../wire/orders";
import { awayText, daysBetween, dayText } from "../controls/day-words";
import { chanceWords } from "./chance-words";

/** Plants still to be delivered, 0 or more. */
export function leftOf({ wanted, delivered }: OrderRow): number {
  return Math.max(0, wanted - delivered);
}

/** Whole days by which an order with plants still to be delivered is late; 0 for one that is not. */
export function daysLate(order: OrderRow, asOf: string): number {
  return leftOf(order) === 0 ? 0 : Math.max(0, -(daysBetween(asOf, order.by) ?? 0));
}

/** How an order stands. @example standingWords({ by: "2027-01-15", wanted: 180, delivered: 60, chance: 0.86 }, "2026-11-25") // "likely: 86 of 100" */
export function standingWords(order: OrderRow, asOf: string): string {
  const late = daysLate(order, asOf);
  if (late > 0) return text.lateBy({ days: late });
  return leftOf(order) === 0 ? text.allDelivered() : chanceWords(order.chance);
}

/** What is left of an order. @example plantsToDeliver({ wanted: 180, delivered: 60 }) // "120 of 180 still to deliver" */
export function plantsToDeliver(order: OrderRow): string {
  const left = leftOf(order);
  const { wanted } = order;
  if (left === 0) return text.delivered({ wanted });
  return order.delivered === 0 ? text.toDeliver({ wanted }) : text.stillToDeliver({ left, wanted });
}

/** By which day, and how far that is. @example byWords({ by: "2027-01-15", wanted: 180, delivered: 60 }, "2026-11-25") // "by 15 Jan 2027, in 51 days" */
export function byWords(order: OrderRow, asOf: string): string {
  if (daysLate(order, asOf) > 0) return text.wasDue({ day: dayText(order.by) });
  const away = awayText(daysBetween(asOf, order.by));
  const by = dayText(order.by);
  return away === "" ? text.by({ by }) : text.byAway({ by, away });
}

/** The overview. @example tallyWords([{ isFine: true }, { isFine: false }]) // "1 of 2 orders needs something done." */
export function tallyWords(orders: readonly OrderRow[]): string {
  const pressing = orders.filter(({ isFine }) => !isFine).length;
  const all = orders.length;
  if (all === 0) return text.noOrders();
  if (all === 1) return pressing === 0 ? text.oneFine() : text.onePressing();
  return pressing === 0 ? text.allFine({ all }) : text.pressing({ pressing, all });
}
