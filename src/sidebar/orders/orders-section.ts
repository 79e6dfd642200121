import { element } from "../controls/element";
import type { Section } from "../section";

/** Says what is to come, and no more. */
export function ordersSection(): Section {
  const section = element(
    "section",
    {},
    element("h2", {}, "Orders"),
    element(
      "p",
      {},
      "Whether each open order can be filled in time will be shown here. Till then a cell tells it: =ORDER_OUTLOOK, or for a new order =ORDER_PLAN, from a tab such as ",
      element("strong", {}, "Orders"),
      " in the blank template (Order, Customer, Variety, Wanted, By, Delivered, Closed).",
    ),
  );
  return { element: section, load: async () => {} };
}
