import { tableWords } from "../words/all-languages";
import type { TablesText } from "../words/language-text";
import { lazily } from "../words/lazy-value";

/** What an orders table may say of an order. */
export type OrderField = keyof TablesText["orders"];

/** Headers by which each column of an orders table is known, in normal form. */
export const orderWords = lazily(() => tableWords("orders"));

/** The headers that stand in our own sentences. */
export const ORDER_COLUMN: Readonly<Record<OrderField, string>> = {
  order: "Order",
  customer: "Customer",
  variety: "Variety",
  wanted: "Wanted",
  by: "By",
  delivered: "Delivered",
  closed: "Closed",
};

/** All of them, as a tab of orders has them. */
export const ORDER_HEADER: readonly string[] = Object.values(ORDER_COLUMN);
