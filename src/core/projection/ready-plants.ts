import type { Kinds } from "../answer";
import { type CivilDay, firstDayOf, isoMonth, type Month, monthOf } from "../dates";
import type { Batch, LeftOut } from "../records";
import { type DayDistribution, drawCount, seededDraws } from "../statistics";
import { leftOutByMethod } from "../timetable";
import {
  type ComingBatch,
  comingBatches,
  drawPlants,
  type Route,
  sharesOfRoutes,
  waysOf,
} from "./coming-batches";
import type { DayRange } from "./forecast-days";
import type { PlantRange } from "./forecast-plants";
import type { Forecaster } from "./forecaster";
import { generalShares } from "./general-shares";
import { type ProjectionQuestion, project } from "./project";

export const READY_COLUMNS = {
  month: "text",
  variety: "text",
  batches: "count",
  fewest: "count",
  likely: "count",
  most: "count",
} as const satisfies Kinds;

/** Plants ready in a month. */
export interface ReadyRow {
  /** As "2026-11". */
  readonly month: string;
  /** Null for all together; '' where the records name none. */
  readonly variety: string | null;
  /** Batches whose likely day lies in the month; those ready already count in the as-of day's. */
  readonly batches: number;
  readonly fewest: number;
  readonly likely: number;
  readonly most: number;
}

const SEED = 1;
/** Batches drawn in all: those of a nursery of a thousand, a thousand times. */
const BATCH_DRAWS = 1_000_000;

/** A batch that a month of the answer counts. */
export interface ReadyBatch {
  readonly batch: Batch;
  /** The month that counts it, as "2026-11". */
  readonly month: string;
  readonly isReady: boolean;
  /** Null where no day is known to reckon from. */
  readonly days: DayRange | null;
  readonly plants: PlantRange | null;
}

export interface ReadyPlants {
  readonly rows: readonly ReadyRow[];
  /** Those that the months count. */
  readonly batches: readonly ReadyBatch[];
  readonly remarks: readonly LeftOut[];
}

/**
 * How many plants will be ready, by month and variety and all together. Plants that are ready
 * already stand in the month of the as-of day; batches forgotten long ago are left out.
 *
 * Method: seeded draws of the whole; each draws once what is unknown of the shares and uses it for
 *   every batch, so that a sum over batches is not falsely sure.
 *
 * @param believing what is believed of batches to come; what the records teach, if left out
 */
export function readyPlants(question: ProjectionQuestion, believing?: Forecaster): ReadyPlants {
  const projection = project(question, believing);
  const { batches, routes } = comingBatches(projection);
  const coming = byMonths(batches, question.asOf);
  const totals = drawTotals(coming, routes, projection.forecaster);
  const rows = rowsOf(totals, coming, question.level);
  return {
    rows,
    remarks: [
      ...leftOutByMethod(question),
      ...generalShares(waysOf(routes), projection.forecaster),
    ],
    batches: coming.map(({ batch: { state, toCome }, likelyMonth }) => ({
      batch: state.batch,
      month: isoMonth(likelyMonth),
      isReady: toCome === null,
      days: projection.days.range(state, state.method.ready),
      plants: projection.plants(state, state.method.ready),
    })),
  };
}

/** A coming batch with the chances of the months in which it may be ready. */
interface MonthlyBatch {
  readonly batch: ComingBatch;
  readonly variety: string;
  readonly months: readonly MonthChance[];
  readonly likelyMonth: Month;
}

interface MonthChance {
  readonly month: Month;
  /** Chance of this month or an earlier one. */
  readonly upTo: number;
}

function byMonths(batches: readonly ComingBatch[], asOf: CivilDay): MonthlyBatch[] {
  return batches.map((batch) => {
    const { toCome } = batch;
    const likely = toCome === null || toCome.likely < asOf ? asOf : toCome.likely;
    return {
      batch,
      variety: batch.variety,
      months:
        toCome === null ? [{ month: monthOf(asOf), upTo: 1 }] : monthChances(toCome.days, asOf),
      likelyMonth: monthOf(likely),
    };
  });
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

/** Plants ready by month and variety, null being all together, one number a draw. */
type Totals = ReadonlyMap<Month, ReadonlyMap<string | null, Float64Array>>;

function drawTotals(
  batches: readonly MonthlyBatch[],
  routes: readonly Route[],
  forecaster: Forecaster,
): Totals {
  const draws = drawCount(batches.length, BATCH_DRAWS);
  const totals = new Map<Month, Map<string | null, Float64Array>>();
  const numbersOf = (month: Month, variety: string | null): Float64Array => {
    const byVariety = totals.get(month) ?? new Map<string | null, Float64Array>();
    totals.set(month, byVariety);
    const numbers = byVariety.get(variety) ?? new Float64Array(draws);
    byVariety.set(variety, numbers);
    return numbers;
  };
  // Looked up once a batch and month, not once a draw.
  const drawn = batches.map(({ batch: { plants, toCome }, months, variety }) => ({
    plants,
    route: toCome?.route ?? null,
    months: months.map(({ month, upTo }) => ({
      upTo,
      ofVariety: numbersOf(month, variety),
      ofAll: numbersOf(month, null),
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
      const ready = route === null ? plants : drawPlants(plants, shares[route] ?? [], random);
      const month = months[at];
      if (month === undefined) continue;
      month.ofVariety[draw] = (month.ofVariety[draw] as number) + ready;
      month.ofAll[draw] = (month.ofAll[draw] as number) + ready;
    }
  }
  return totals;
}

function rowsOf(totals: Totals, coming: readonly MonthlyBatch[], level: number): ReadyRow[] {
  const side = (1 - level) / 2;
  for (const byVariety of totals.values()) for (const numbers of byVariety.values()) numbers.sort();
  const rangeOf = (month: Month, variety: string | null) => {
    const sorted = totals.get(month)?.get(variety) ?? new Float64Array();
    const [fewest, likely, most] = [side, 0.5, 1 - side].map((share) => quantile(sorted, share));
    return { fewest: fewest as number, likely: likely as number, most: most as number };
  };
  const isEmpty = (month: Month, variety: string | null) => rangeOf(month, variety).most === 0;
  const months = [...totals.keys()].filter((month) => !isEmpty(month, null)).sort((a, b) => a - b);
  const first = months[0];
  const last = months[months.length - 1];
  if (first === undefined || last === undefined) return [];
  const rows: ReadyRow[] = [];
  for (let at = first as number; at <= last; at += 1) {
    const month = at as Month;
    const varieties = [...(totals.get(month)?.keys() ?? [])]
      .filter((variety) => variety !== null && !isEmpty(month, variety))
      .sort();
    for (const variety of [...varieties, null]) {
      const batches = coming.filter(
        (one) => one.likelyMonth === month && (variety === null || one.variety === variety),
      ).length;
      rows.push({ month: isoMonth(month), variety, batches, ...rangeOf(month, variety) });
    }
  }
  return rows;
}

/** The smallest drawn number that at least a share of the draws stay at or below. */
function quantile(sorted: Float64Array, share: number): number {
  return sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)] ?? 0;
}
