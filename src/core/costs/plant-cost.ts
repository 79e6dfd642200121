import { eachName } from "../cells";
import type { Method } from "../timetable";
import type { CostRemark, UnpricedItem } from "./cost-remark";
import { type PricesReading, priceOf, unpriced } from "./read-prices";

/** What one plant has cost, and what of it is not in that. */
export interface PlantCost {
  /** Money; null where nothing has a price. */
  readonly cost: number | null;
  readonly withoutPrice: readonly UnpricedItem[];
  /** Work is known of that no price is given for. */
  readonly isWorkUnpriced: boolean;
  /** Names of the steps that have no work rate. */
  readonly withoutRate: readonly string[];
}

/**
 * What one plant has cost once it is through a step of its method: needs and work of every step until then,
 * as far as they have prices and work rates.
 *
 * @param through index of the step
 */
export function plantCost(method: Method, through: number, prices: PricesReading): PlantCost {
  let cost: number | null = null;
  let isWorkUnpriced = false;
  const withoutPrice: UnpricedItem[] = [];
  const withoutRate: string[] = [];
  for (const { name, needs, perPersonHour } of method.steps.slice(0, through + 1)) {
    for (const need of needs) {
      const price = priceOf(prices, need);
      if (price === null) withoutPrice.push(unpriced(prices, need.item, need.unit));
      else cost = (cost ?? 0) + price;
    }
    if (perPersonHour === null) withoutRate.push(name);
    else if (prices.hour === null) isWorkUnpriced = true;
    else cost = (cost ?? 0) + prices.hour / perPersonHour;
  }
  return { cost, withoutPrice, isWorkUnpriced, withoutRate };
}

/** What is to be said of what is in none of some costs. */
export function plantCostRemarks(
  costs: readonly PlantCost[],
  prices: PricesReading,
): readonly CostRemark[] {
  // Who gives no prices asks for no costs.
  if (prices.ofItem.size === 0 && prices.hour === null) return [];
  const steps = prices.hour === null ? [] : eachName(costs.flatMap((one) => one.withoutRate));
  return [
    ...itemsWithoutPrice(costs.flatMap(({ withoutPrice }) => withoutPrice)),
    ...(costs.some((one) => one.isWorkUnpriced) ? [{ code: "hour-without-price" } as const] : []),
    ...(steps.length === 0 ? [] : [{ code: "steps-without-rate", steps } as const]),
  ];
}

/** Names each item once; nothing where there are none. */
export function itemsWithoutPrice(unpricedItems: readonly UnpricedItem[]): readonly CostRemark[] {
  const items = new Map(unpricedItems.map((one) => [`${one.item}\n${one.unit}`, one]));
  const inOrder = [...items.keys()].sort().flatMap((key) => items.get(key) ?? []);
  return inOrder.length === 0 ? [] : [{ code: "items-without-price", items: inOrder }];
}
