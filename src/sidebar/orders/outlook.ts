import * as text from "../../sentences/made/orders-page";
import type { OrderRow, OrdersAnswer } from "../../wire/orders";
import { countText } from "../controls/count-words";
import { group } from "../controls/group";
import { longList } from "../controls/long-list";
import { quiet } from "../controls/paragraph";
import { ofTen } from "./chance-words";
import { orderItem } from "./order-item";

/** With more orders than this those that are fine are folded. */
const ORDERS_UNFOLDED = 12;

/** The open orders: those that need something done, by day, then those that are fine. */
export function outlook({ orders, asOf, assurance }: OrdersAnswer): HTMLElement[] {
  const pressing = orders.filter(({ isFine }) => !isFine);
  const fine = orders.filter(({ isFine }) => isFine);
  const part = (title: string, rows: readonly OrderRow[], open: boolean) =>
    group({
      title,
      tally: countText(rows.length),
      open,
      content: () => longList(rows, (order) => orderItem({ order, asOf, assurance })),
    });
  const help = quiet(text.fineWhen({ chance: ofTen(assurance) }));
  return [
    ...(pressing.length === 0 ? [] : [part(text.somethingToDo(), pressing, true)]),
    ...(fine.length === 0 ? [] : [part(text.fine(), fine, orders.length <= ORDERS_UNFOLDED)]),
    ...(orders.length === 0 ? [] : [help]),
  ];
}
