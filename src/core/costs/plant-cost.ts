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
  for (const { needs, perPersonHour } of method.steps.slice(0, through + 1)) {
    for (const need of needs) {
      const price = priceOf(prices, need);
      if (price === null) withoutPrice.push(unpriced(prices, need.item, need.unit));
      else cost = (cost ?? 0) + price;
    }
    if (perPersonHour === null) continue;
    if (prices.hour === null) isWorkUnpriced = true;
    else cost = (cost ?? 0) + prices.hour / perPersonHour;
  }
  return { cost, withoutPrice, isWorkUnpriced };
}

/** What is to be said of what is in none of some costs. */
export function unpricedRemarks(costs: Iterable<PlantCost>): readonly CostRemark[] {
  const items = new Map<string, UnpricedItem>();
  let isWorkUnpriced = false;
  for (const one of costs) {
    for (const item of one.withoutPrice) items.set(`${item.item}\n${item.unit}`, item);
    isWorkUnpriced ||= one.isWorkUnpriced;
  }
  const keys = [...items.keys()].sort();
  return [
    ...(keys.length === 0
      ? []
      : [
          {
            code: "items-without-price",
            items: keys.flatMap((key) => items.get(key) ?? []),
          } as const,
        ]),
    ...(isWorkUnpriced ? [{ code: "hour-without-price" } as const] : []),
  ];
}
