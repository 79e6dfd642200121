import { lazily } from "../lazily";
import { everyWord, type TablesText, tableWords } from "../words";

/** What an orders table may say of an order. */
export type OrderField = keyof TablesText["orders"] | "crop";

/** Headers by which each column of an orders table is known, in normal form. */
export const orderWords = lazily(() => ({
  ...tableWords("orders"),
  crop: everyWord(({ facts }) => facts.crop),
}));

/**
 * The header of a tab of orders as we make it, in the order of its columns; a crop can be said under Variety.
 * It is read back by the words above as any other is: a format, in no language.
 */
export const ORDER_HEADER: Readonly<Record<Exclude<OrderField, "crop">, string>> = {
  order: "Order",
  customer: "Customer",
  variety: "Variety",
  wanted: "Wanted",
  by: "By",
  delivered: "Delivered",
  closed: "Closed",
};

/** Every column that is read, by the name in sentences. */
export const ORDER_COLUMNS: Readonly<Record<OrderField, string>> = {
  ...ORDER_HEADER,
  crop: "Crop",
};
