import { nearAlike } from "../names";
import type { ToldWords } from "../records";
import type { Orders } from "./order";

/** Two customers who may be one, with how many open orders each has; the first has fewer. */
export interface NearCustomers {
  readonly rare: string;
  readonly orders: number;
  readonly common: string;
  readonly others: number;
}

/** Near-alike customers, those of most orders first, but those that were told to be two. */
export function nearCustomers({ open }: Orders, words: ToldWords | undefined): NearCustomers[] {
  const borne = new Map<string, number>();
  for (const { customer } of open) {
    if (customer !== "") borne.set(customer, (borne.get(customer) ?? 0) + 1);
  }
  const of = (name: string) => borne.get(name) ?? 0;
  return nearAlike([...borne.keys()])
    .filter((pair) => words?.isApart(...pair) !== true)
    .map((pair): NearCustomers => {
      const [one, other] = pair;
      const [rare, common] = of(one) > of(other) ? [other, one] : [one, other];
      return { rare, orders: of(rare), common, others: of(common) };
    })
    .sort((a, b) => b.orders + b.others - a.orders - a.others);
}
