import type { OrderRow } from "../../workbook/sidebar-calls";
import { counted, countText } from "../controls/count-words";
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

/** How an order stands. @example standingWords(order, asOf) // "likely: 86 of 100" */
export function standingWords(order: OrderRow, asOf: string): string {
  const late = daysLate(order, asOf);
  if (late > 0) return `no, late by ${counted(late, "day", "days")}`;
  return leftOf(order) === 0 ? "all delivered" : chanceWords(order.chance);
}

/** @example plantsToDeliver(order) // "120 of 180 still to deliver" */
export function plantsToDeliver(order: OrderRow): string {
  const left = leftOf(order);
  if (left === 0) return `${countText(order.wanted)} delivered`;
  if (order.delivered === 0) return `${counted(order.wanted, "plant", "plants")} to deliver`;
  return `${countText(left)} of ${countText(order.wanted)} still to deliver`;
}

/** @example byWords(order, "2026-11-25") // "by 15 Jan 2027, in 51 days" */
export function byWords(order: OrderRow, asOf: string): string {
  if (daysLate(order, asOf) > 0) return `was due ${dayText(order.by)}`;
  const away = awayText(daysBetween(asOf, order.by));
  return `by ${dayText(order.by)}${away === "" ? "" : `, ${away}`}`;
}

/** The overview. @example tallyWords([fine, other]) // "1 of 2 orders needs something done." */
export function tallyWords(orders: readonly OrderRow[]): string {
  const pressing = orders.filter(({ isFine }) => !isFine).length;
  if (orders.length === 0) return "No open orders.";
  if (orders.length === 1) {
    return `One open order: ${pressing === 0 ? "it is fine" : "it needs something done"}.`;
  }
  if (pressing === 0) return `All ${countText(orders.length)} orders are fine.`;
  const needs = pressing === 1 ? "needs" : "need";
  return `${countText(pressing)} of ${countText(orders.length)} orders ${needs} something done.`;
}
