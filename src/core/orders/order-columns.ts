import { tableWords } from "../words/all-languages";
import type { TablesText } from "../words/language-text";
import { lazily } from "../words/lazy-value";

/** What an orders table may say of an order. */
export type OrderField = keyof TablesText["orders"];

/** Headers by which each column of an orders table is known, in normal form. */
export const orderWords = lazily(() => tableWords("orders"));

/** All of them, in the order in which a tab of orders has them. */
export const ORDER_FIELDS: readonly OrderField[] = [
  "order",
  "customer",
  "variety",
  "wanted",
  "by",
  "delivered",
  "closed",
];
