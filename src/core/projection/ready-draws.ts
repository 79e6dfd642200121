import { type CivilDay, firstDayOf, type Month, monthOf } from "../dates";
import { madeOnce } from "../made-once";
import { type DayDistribution, drawCount, seededDraws } from "../statistics";
import { type ComingBatch, drawPlants, type Route, sharesOfRoutes } from "./coming-batches";
import type { Forecaster } from "./forecaster";

const SEED = 1;
/** Batches drawn in all: those of a nursery of a thousand, a thousand times. */
const BATCH_DRAWS = 1_000_000;

/** A batch that is still to be ready, with the chances of the months in which it may be. */
export interface MonthlyBatch {
  readonly batch: ComingBatch;
  readonly toCome: NonNullable<ComingBatch["toCome"]>;
  readonly months: readonly MonthChance[];
  readonly likelyMonth: Month;
}

interface MonthChance {
  readonly month: Month;
  /** Chance of this month or an earlier one. */
  readonly upTo: number;
}

/** Plants that get ready, one number a draw. */
export type Numbers = Float64Array;

export interface ReadyDraws {
  readonly draws: number;
  /** By month and variety; null is all together. */
  readonly months: ReadonlyMap<Month, ReadonlyMap<string | null, Numbers>>;
  /** What each batch brought in each of its months, over all draws: in the order of both. */
  readonly brought: readonly (readonly number[])[];
}

/**
 * Draws the plants that get ready.
 *
 * Method: seeded draws of the whole; each draws once what is unknown of the shares and uses it for
 *   every batch, so that a sum over batches is not falsely sure.
 */
export function readyDraws(
  batches: readonly MonthlyBatch[],
  routes: readonly Route[],
  forecaster: Forecaster,
): ReadyDraws {
  const draws = drawCount(batches.length, BATCH_DRAWS);
  const totals = new Map<Month, Map<string | null, Numbers>>();
  const numbersOf = (month: Month, variety: string | null): Numbers =>
    madeOnce(
      madeOnce(totals, month, () => new Map<string | null, Numbers>()),
      variety,
      () => new Float64Array(draws),
    );
  // Looked up once a batch and month, not once a draw.
  const drawn = batches.map(({ batch: { plants, variety }, toCome, months }) => ({
    plants,
    route: toCome.route,
    months: months.map(({ month, upTo }) => ({
      upTo,
      ofVariety: numbersOf(month, variety),
      ofAll: numbersOf(month, null),
      brought: 0,
    })),
  }));
  const random = seededDraws(SEED);
  for (let draw = 0; draw < draws; draw += 1) {
    const truth = forecaster.draw(random.uniform);
    const shares = sharesOfRoutes(routes, truth);
    for (const { plants, route, months } of drawn) {
      const chance = random.uniform();
      let at = 0;
      // The last month takes what rounding leaves over.
      while (at < months.length - 1 && chance >= (months[at] as { upTo: number }).upTo) at += 1;
      const ready = drawPlants(plants, shares[route] ?? [], random);
      const month = months[at];
      if (month === undefined) continue;
      month.brought += ready;
      month.ofVariety[draw] = (month.ofVariety[draw] as number) + ready;
      month.ofAll[draw] = (month.ofAll[draw] as number) + ready;
    }
  }
  const brought = drawn.map(({ months }) => months.map((month) => month.brought));
  return { draws, months: totals, brought };
}

/** A batch with its months; none where it is ready already. */
export function monthly(batch: ComingBatch, asOf: CivilDay): readonly MonthlyBatch[] {
  const { toCome } = batch;
  if (toCome === null) return [];
  const likely = toCome.likely < asOf ? asOf : toCome.likely;
  return [{ batch, toCome, months: monthChances(toCome.days, asOf), likelyMonth: monthOf(likely) }];
}

/** Days gathered by month; a day that is past counts as the as-of day's. */
function monthChances({ first, mass }: DayDistribution, asOf: CivilDay): MonthChance[] {
  const chances: MonthChance[] = [];
  let upTo = 0;
  let at = 0;
  while (at < mass.length) {
    const day = first + at;
    const month = monthOf(Math.max(asOf, day) as CivilDay);
    const after = firstDayOf((month + 1) as Month) - first;
    const end = Math.min(after, mass.length);
    for (; at < end; at += 1) upTo += mass[at] as number;
    chances.push({ month, upTo });
  }
  return chances;
}
