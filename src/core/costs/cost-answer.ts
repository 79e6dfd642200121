import { type Answer, type AnswerValue, columns } from "../answer";
import type { CivilDay } from "../dates/civil-day";
import type { Forecaster } from "../projection/forecaster";
import { project } from "../projection/project";
import { leftOutRemark, type Records } from "../records/records";
import type { Timetable } from "../timetable/timetable";
import { namesRemark, namesText } from "../words/names-text";
import { normalText } from "../words/normal-text";
import { type BatchCost, batchCosts } from "./batch-costs";
import { methodCosts } from "./method-costs";
import type { PricesReading } from "./read-prices";

const COLUMNS = columns({
  Batch: "text",
  Materials: "number",
  Hours: "hours",
  Cost: "number",
  "Cost per ready plant": "number",
});

/** Ranges are not shown here, so the level makes no difference to the answer. */
const ANY_LEVEL = 0.8;

/** More than a nursery has items. */
const MOST_NAMES = 12;

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
 * Nothing without a price counts as 0: a cell of which nothing is known is blank, and the remark
 * names every item needed without a price, every step without a work rate or plants, and the
 * prices that nothing needed so far.
 *
 * @param believing what is believed of batches to come; what the records teach, if left out
 */
export function costAnswer(question: CostQuestion, believing?: Forecaster): Answer {
  const { records, timetable, prices, asOf } = question;
  const projection = project({ records, timetable, asOf, level: ANY_LEVEL }, believing);
  const costs = batchCosts(projection, prices);
  const rows = costs.map(({ state, materials, hours, cost, ready }): AnswerValue[] => [
    state.batch.name,
    hundredths(materials),
    hundredths(hours),
    hundredths(cost),
    perPlant(cost, ready),
  ]);
  for (const one of methodCosts(costs, timetable)) {
    rows.push([
      `All: ${one.method}`,
      hundredths(one.materials),
      hundredths(one.hours),
      hundredths(one.cost),
      perPlant(one.costOfReady, one.ready),
    ]);
    if (one.started === null) continue;
    const each = (amount: number | null) => perPlant(amount, one.started);
    rows.push([
      `A started plant: ${one.method}`,
      each(one.materials),
      each(one.hours),
      each(one.cost),
      null,
    ]);
  }
  const noMethod = projection.batches.filter(({ state }) => state === null);
  const idle = projection.batches.length - noMethod.length - costs.length;
  const remarks = [
    leftOutRemark(records),
    ...prices.troubles,
    ...unknowns(costs, prices),
    namesRemark(
      "not in it, the timetable has no such method",
      noMethod.map(({ batch }) => batch.name),
      MOST_NAMES,
    ),
    idle === 0 ? null : `${idle} ${idle === 1 ? "batch" : "batches"} not begun`,
  ].filter((one) => one !== null);
  return { columns: COLUMNS, rows, remark: remarks.join("; ") || null };
}

/** What is not in the sums, and what of the prices is of no use. */
function unknowns(costs: readonly BatchCost[], prices: PricesReading): (string | null)[] {
  const owns = costs.map(({ own, state }) => ({ ...own, batch: state.batch.name }));
  const needed = new Set(owns.flatMap(({ items }) => items.map(normalText)));
  const unused = [...prices.ofItem.values()].flatMap(([one]) =>
    one === undefined || needed.has(normalText(one.item)) ? [] : [one.item],
  );
  const worked = owns.some(({ hours }) => hours !== null);
  return [
    namesRemark(
      "no price, so not in the cost, for",
      owns.flatMap((own) => own.withoutPrice),
      MOST_NAMES,
    ),
    worked && prices.hour === null ? "no price of an hour, so no work in the cost" : null,
    !worked && prices.hour !== null ? "the price of an hour is not used" : null,
    namesRemark(
      "no work rate in the timetable, so hours not in it, for",
      owns.flatMap(({ withoutRate }) => withoutRate.map(({ name }) => name)),
      MOST_NAMES,
    ),
    namesRemark(
      "steps without a count of plants, so not in it, in",
      owns.flatMap(({ withoutPlants, batch }) =>
        withoutPlants.length === 0 ? [] : [`${batch} (${namesText(withoutPlants.map(nameOf))})`],
      ),
      MOST_NAMES,
    ),
    namesRemark("priced, but not needed so far", unused, MOST_NAMES),
  ];
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
