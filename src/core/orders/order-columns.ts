import { lazily } from "../lazily";
import { type TablesText, tableWords } from "../words";

/** What an orders table may say of an order. */
export type OrderField = keyof TablesText["orders"];

/** Headers by which each column of an orders table is known, in normal form. */
export const orderWords = lazily(() => tableWords("orders"));

/**
 * The header of a tab of orders as we make it, in the order of its columns. It is read back by the words
 * above as any other is: a format, in no language.
 */
export const ORDER_HEADER: Readonly<Record<OrderField, string>> = {
  order: "Order",
  customer: "Customer",
  variety: "Variety",
  wanted: "Wanted",
  by: "By",
  delivered: "Delivered",
  closed: "Closed",
};
