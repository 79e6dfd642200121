import type { BatchState } from "../projection";
import type { Step } from "../timetable";
import type { UnpricedItem } from "./cost-remark";
import { type PricesReading, priceOf, unpriced } from "./read-prices";

/** What the steps that a batch has passed have used. */
export interface OwnCost {
  /** Money; 0 where nothing was needed, null where nothing needed has a price. */
  readonly materials: number | null;
  /** Person-hours; null where no step passed has both plants and a work rate. */
  readonly hours: number | null;
  /** Steps passed of which the plants are not known. */
  readonly withoutPlants: readonly Step[];
  /** Steps passed that have no work rate. */
  readonly withoutRate: readonly Step[];
  /** Items needed that have no price in their unit. */
  readonly withoutPrice: readonly UnpricedItem[];
  /** Items that were needed, however many, as the timetable writes them. */
  readonly items: readonly string[];
}

/**
 * Materials and hours of the steps up to the latest recorded: a step before that is past, whether
 * or not it was written down. A batch taken from a lot begins with its first recorded step; what
 * came before was done in the lot. Plants of a step are those counted at it, else those counted
 * last before it. Amounts are as needed, not rounded to whole pieces or packs.
 */
export function ownCost(state: BatchState, prices: PricesReading): OwnCost {
  const { batch, method, doneOn, counts, reached } = state;
  let materials: number | null = null;
  let hours: number | null = null;
  let needed = false;
  const withoutPlants: Step[] = [];
  const withoutRate: Step[] = [];
  const withoutPrice: UnpricedItem[] = [];
  const items: string[] = [];
  let plants = batch.fromLot === "" ? null : batch.received;
  let begun = batch.fromLot === "";
  for (let index = 0; index <= reached; index += 1) {
    const step = method.steps[index] as Step;
    const count = counts[index] ?? null;
    begun ||= count !== null || (doneOn[index] ?? null) !== null;
    if (!begun) continue;
    plants = count ?? plants;
    if (step.perPersonHour === null) withoutRate.push(step);
    items.push(...step.needs.map(({ item }) => item));
    if (plants === null) {
      if (step.perPersonHour !== null || step.needs.length > 0) withoutPlants.push(step);
      continue;
    }
    if (step.perPersonHour !== null) hours = (hours ?? 0) + plants / step.perPersonHour;
    for (const { item, amount, unit } of step.needs) {
      const price = priceOf(prices, { item, amount: amount * plants, unit });
      needed = true;
      if (price === null) withoutPrice.push(unpriced(prices, item, unit));
      else materials = (materials ?? 0) + price;
    }
  }
  if (!needed && withoutPlants.length === 0) materials = 0;
  return { materials, hours, withoutPlants, withoutRate, withoutPrice, items };
}
