import type { Kinds, RowOf } from "../answer";
import { eachName } from "../cells";
import type { CivilDay } from "../dates";
import { ANY_LEVEL, type Forecaster, project } from "../projection";
import type { Records } from "../records";
import { leftOutByMethod, type Timetable } from "../timetable";
import { normalText } from "../words";
import { type BatchCost, batchCosts } from "./batch-costs";
import type { CostRemark } from "./cost-remark";
import { methodCosts } from "./method-costs";
import { itemsWithoutPrice } from "./plant-cost";
import type { PricesReading } from "./read-prices";

/** The columns of a row of costs, behind the batch or what the row adds up. */
export const COST_COLUMNS = {
  materials: "number",
  hours: "hours",
  cost: "number",
  costOfReady: "number",
} as const satisfies Kinds;

/** Costs of a batch, of all of a method, or of one of its plants, by the batch's or the method's name. */
export interface CostRow extends RowOf<typeof COST_COLUMNS, Record<never, unknown>> {
  readonly of: "batch" | "method" | "started plant";
  readonly name: string;
}

export interface CostsSoFar {
  readonly rows: readonly CostRow[];
  readonly remarks: readonly CostRemark[];
}

export interface CostQuestion {
  readonly records: Records;
  readonly timetable: Timetable;
  readonly prices: PricesReading;
  readonly asOf: CivilDay;
}

/**
 * What each begun batch, open or closed, has cost so far, see batch-costs.ts: Materials and Cost in
 * the money of the prices, Hours of persons; Cost is Materials and the price of the Hours. Cost per
 * ready plant divides by the plants counted as ready, or likely to be, so that it carries the
 * losses; blank where no plant is, or none can be told.
 *
 * Below, for each method, "All: method" with the sums, and the cost per ready plant over those
 * batches whose ready plants can be told; and "A started plant: method" with what each plant
 * begun with carries. The latter is left out where a lot and a batch taken from it differ in
 * method. What one started plant of a batch carries is its Cost over BATCH_BALANCE's Started with.
 *
 * Nothing without a price counts as 0: a cell of which nothing is known is blank, and remarks
 * name every item needed without a price, every step without a work rate or plants, and the
 * prices that nothing needed so far.
 *
 * @param believing what is believed of batches to come; what the records teach, if left out
 */
export function costsSoFar(question: CostQuestion, believing?: Forecaster): CostsSoFar {
  const { records, timetable, prices, asOf } = question;
  const projection = project({ records, timetable, asOf, level: ANY_LEVEL }, believing);
  const costs = batchCosts(projection, prices);
  const rows = costs.map(
    ({ state, materials, hours, cost, ready }): CostRow => ({
      of: "batch",
      name: state.batch.name,
      materials: hundredths(materials),
      hours: hundredths(hours),
      cost: hundredths(cost),
      costOfReady: perPlant(cost, ready),
    }),
  );
  for (const one of methodCosts(costs, timetable)) {
    rows.push({
      of: "method",
      name: one.method,
      materials: hundredths(one.materials),
      hours: hundredths(one.hours),
      cost: hundredths(one.cost),
      costOfReady: perPlant(one.costOfReady, one.ready),
    });
    if (one.started === null) continue;
    const each = (amount: number | null) => perPlant(amount, one.started);
    rows.push({
      of: "started plant",
      name: one.method,
      materials: each(one.materials),
      hours: each(one.hours),
      cost: each(one.cost),
      costOfReady: null,
    });
  }
  const idle = projection.batches.filter(({ state }) => state !== null).length - costs.length;
  const remarks = [...leftOutByMethod(question), ...prices.troubles, ...unknowns(costs, prices)];
  if (idle > 0) remarks.push({ code: "not-begun", batches: idle });
  return { rows, remarks };
}

/** What is not in the sums, and what of the prices is of no use. */
function unknowns(costs: readonly BatchCost[], prices: PricesReading): CostRemark[] {
  const owns = costs.map(({ own, state }) => ({ ...own, batch: state.batch.name }));
  const needed = new Set(owns.flatMap(({ items }) => items.map(normalText)));
  const unused = [...prices.ofItem.values()].flatMap(([one]) =>
    one === undefined || needed.has(normalText(one.item)) ? [] : [one.item],
  );
  const worked = owns.some(({ hours }) => hours !== null);
  const steps = owns.flatMap(({ withoutRate }) => withoutRate.map(nameOf));
  const batches = owns
    .filter(({ withoutPlants }) => withoutPlants.length > 0)
    .map(({ batch, withoutPlants }) => ({ batch, steps: eachName(withoutPlants.map(nameOf)) }));
  const remarks = [...itemsWithoutPrice(owns.flatMap(({ withoutPrice }) => withoutPrice))];
  if (worked && prices.hour === null) remarks.push({ code: "hour-without-price" });
  if (!worked && prices.hour !== null) remarks.push({ code: "hour-not-used" });
  if (steps.length > 0) remarks.push({ code: "steps-without-rate", steps: eachName(steps) });
  if (batches.length > 0) {
    batches.sort((a, b) => (a.batch < b.batch ? -1 : 1));
    remarks.push({ code: "steps-without-plants", batches });
  }
  if (unused.length > 0) remarks.push({ code: "prices-not-needed", items: eachName(unused) });
  return remarks;
}

function nameOf({ name }: { readonly name: string }): string {
  return name;
}

function hundredths(amount: number | null): number | null {
  return amount === null ? null : Math.round(amount * 100) / 100;
}

/** To a ten-thousandth: a plant may cost less than a coin. */
function perPlant(amount: number | null, plants: number | null): number | null {
  if (amount === null || plants === null || plants === 0) return null;
  return Math.round((amount / plants) * 10_000) / 10_000;
}
