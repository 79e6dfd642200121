import * as text from "../../sentences/made/orders-page";
import type { OrderRow, OrdersAnswer } from "../../wire/orders";
import { countText } from "../controls/count-words";
import { disclosure } from "../controls/disclosure";
import { element } from "../controls/element";
import { longList } from "../controls/long-list";
import { ofTen } from "./chance-words";
import { orderItem } from "./order-item";

/** With more orders than this those that are fine are folded. */
const ORDERS_UNFOLDED = 12;

/** The open orders: those that need something done, by day, then those that are fine. */
export function outlook({ orders, asOf, assurance }: OrdersAnswer): HTMLElement[] {
  const pressing = orders.filter(({ isFine }) => !isFine);
  const fine = orders.filter(({ isFine }) => isFine);
  const group = (title: string, rows: readonly OrderRow[], open: boolean) =>
    disclosure({
      kind: "group",
      open,
      summary: element(
        "h3",
        {},
        `${title} `,
        element("span", { class: "tally" }, countText(rows.length)),
      ),
      content: () => longList(rows, (order) => orderItem({ order, asOf, assurance })),
    });
  const help = element("p", { class: "quiet" }, text.fineWhen({ chance: ofTen(assurance) }));
  return [
    ...(pressing.length === 0 ? [] : [group(text.somethingToDo(), pressing, true)]),
    ...(fine.length === 0 ? [] : [group(text.fine(), fine, orders.length <= ORDERS_UNFOLDED)]),
    ...(orders.length === 0 ? [] : [help]),
  ];
}
