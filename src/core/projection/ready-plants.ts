import type { Kinds } from "../answer";
import { isoMonth, type Month } from "../dates";
import type { Batch, LeftOut } from "../records";
import { leftOutByMethod } from "../timetable";
import { type ComingBatch, comingBatches, waysOf } from "./coming-batches";
import type { DayRange } from "./forecast-days";
import type { PlantRange } from "./forecast-plants";
import type { Forecaster } from "./forecaster";
import { generalShares } from "./general-shares";
import { addTo, type LikelyShares, likelyShares } from "./likely-shares";
import { type ProjectionQuestion, project } from "./project";
import {
  type MonthlyBatch,
  monthly,
  type Numbers,
  type ReadyDraws,
  readyDraws,
} from "./ready-draws";

export const READY_COLUMNS = {
  month: "text",
  variety: "text",
  batches: "count",
  fewest: "count",
  likely: "count",
  most: "count",
  fewestByEnd: "count",
  likelyByEnd: "count",
  mostByEnd: "count",
} as const satisfies Kinds;

/** Plants that are ready now, get ready in a month, or both together. */
export interface ReadyRow {
  /** A month as "2026-11"; "now" for those that stand ready, "all" for these and all months. */
  readonly month: string;
  /** Null for all together; '' where the records name none. */
  readonly variety: string | null;
  /** Batches whose likely day lies in the month; a day that is past counts as the as-of day. */
  readonly batches: number;
  readonly fewest: number;
  readonly likely: number;
  readonly most: number;
  /** Ready by the end of the month, those that are ready now among them; null beside all months. */
  readonly fewestByEnd: number | null;
  readonly likelyByEnd: number | null;
  readonly mostByEnd: number | null;
}

/** A batch that a row of the answer counts. */
export interface ReadyBatch {
  readonly batch: Batch;
  /** The row that counts it: a month as "2026-11", or "now". */
  readonly month: string;
  readonly isReady: boolean;
  /** Null where no day is known to reckon from. */
  readonly days: DayRange | null;
  /** Likely is its share of what is likely of all. */
  readonly plants: PlantRange | null;
}

export interface ReadyPlants {
  readonly rows: readonly ReadyRow[];
  /** Those that the rows count. */
  readonly batches: readonly ReadyBatch[];
  readonly remarks: readonly LeftOut[];
}

/**
 * How many plants are ready now and will be in each month, by variety and all together. What is likely adds up:
 * batches, varieties and months to all. Fewest and most do not, since hardly ever all do worst, or best, together.
 * Batches forgotten long ago are left out.
 *
 * @param believing what is believed of batches to come; what the records teach, if left out
 */
export function readyPlants(question: ProjectionQuestion, believing?: Forecaster): ReadyPlants {
  const projection = project(question, believing);
  const { batches, routes } = comingBatches(projection);
  const ready = batches.filter(({ toCome }) => toCome === null);
  const coming = batches.flatMap((batch) => monthly(batch, question.asOf));
  const drawn = readyDraws(coming, routes, projection.forecaster);
  const likely = likelyShares(coming, drawn);
  const counted = (
    { state }: ComingBatch,
    { month, share }: { readonly month: string; readonly share: number },
  ): ReadyBatch => {
    const plants = projection.plants(state, state.method.ready);
    return {
      batch: state.batch,
      month,
      isReady: month === "now",
      days: projection.days.range(state, state.method.ready),
      plants: plants === null ? null : around(share, plants),
    };
  };
  return {
    rows: rowsOf({ ready, coming, drawn, likely }, question.level),
    remarks: [
      ...leftOutByMethod(question),
      ...generalShares(waysOf(routes), projection.forecaster),
    ],
    batches: [
      ...ready.map((batch) => counted(batch, { month: "now", share: batch.plants })),
      ...coming.map(({ batch, likelyMonth }, at) =>
        counted(batch, { month: isoMonth(likelyMonth), share: likely.batches[at] as number }),
      ),
    ],
  };
}

/** A likely number with its range, which is wide enough to hold it. */
function around(
  likely: number,
  { fewest, most }: { readonly fewest: number; readonly most: number },
): PlantRange {
  return { fewest: Math.min(fewest, likely), likely, most: Math.max(most, likely) };
}

interface Counted {
  readonly ready: readonly ComingBatch[];
  readonly coming: readonly MonthlyBatch[];
  readonly drawn: ReadyDraws;
  readonly likely: LikelyShares;
}

/** Plants of a variety, or of all, that are ready by some day. */
interface Running {
  readonly variety: string | null;
  readonly numbers: Numbers;
  likely: number;
}

/** Those ready now, then the months, soonest first, then all; in each the varieties before all together. */
function rowsOf({ ready, coming, drawn, likely }: Counted, level: number): readonly ReadyRow[] {
  const named = [...ready, ...coming.map(({ batch }) => batch)].map(({ variety }) => variety);
  const groups = [...new Set(named)].sort();
  const running = [...groups, null].map(
    (variety): Running => ({ variety, numbers: new Float64Array(drawn.draws), likely: 0 }),
  );
  const rows: ReadyRow[] = [];
  for (const own of running) {
    const batches = ready.filter(isOf(own.variety));
    const plants = batches.reduce((sum, one) => sum + one.plants, 0);
    own.numbers.fill(plants);
    own.likely = plants;
    if (plants === 0) continue;
    const certain = { fewest: plants, likely: plants, most: plants };
    rows.push(rowOf("now", own.variety, { batches: batches.length, of: certain, byEnd: certain }));
  }
  for (const { month, isTold } of monthsInTurn(drawn, likely, level)) {
    for (const own of running) {
      const numbers = drawn.months.get(month)?.get(own.variety);
      const share = likely.months.get(month)?.get(own.variety) ?? 0;
      if (numbers !== undefined) addTo(own.numbers, numbers);
      own.likely += share;
      if (!isTold) continue;
      const of = around(share, ends(numbers, level));
      if (of.most === 0 && own.variety !== null) continue;
      const batches = coming.filter(
        ({ batch, likelyMonth }) => likelyMonth === month && isOf(own.variety)(batch),
      ).length;
      const byEnd = around(own.likely, ends(own.numbers, level));
      rows.push(rowOf(isoMonth(month), own.variety, { batches, of, byEnd }));
    }
  }
  if (rows.length === 0) return [];
  for (const { variety, numbers, likely: sum } of running) {
    const of = around(sum, ends(numbers, level));
    const batches = named.filter((name) => variety === null || name === variety).length;
    if (of.most > 0) rows.push(rowOf("all", variety, { batches, of, byEnd: null }));
  }
  return rows;
}

function isOf(variety: string | null) {
  return (batch: ComingBatch) => variety === null || batch.variety === variety;
}

function rowOf(
  month: string,
  variety: string | null,
  {
    batches,
    of,
    byEnd,
  }: { readonly batches: number; readonly of: PlantRange; readonly byEnd: PlantRange | null },
): ReadyRow {
  return {
    month,
    variety,
    batches,
    fewest: of.fewest,
    likely: of.likely,
    most: of.most,
    fewestByEnd: byEnd?.fewest ?? null,
    likelyByEnd: byEnd?.likely ?? null,
    mostByEnd: byEnd?.most ?? null,
  };
}

/** Every month of the draws and those between, and which are told: from the first in which any may be ready to the last. */
function monthsInTurn(
  { months }: ReadyDraws,
  likely: LikelyShares,
  level: number,
): readonly { readonly month: Month; readonly isTold: boolean }[] {
  const drawn = [...months.keys()];
  const some = drawn.filter(
    (month) =>
      around(likely.months.get(month)?.get(null) ?? 0, ends(months.get(month)?.get(null), level))
        .most > 0,
  );
  if (drawn.length === 0) return [];
  const first = Math.min(...drawn);
  return Array.from({ length: Math.max(...drawn) - first + 1 }, (_, at) => {
    const month = (first + at) as Month;
    return { month, isTold: month >= Math.min(...some) && month <= Math.max(...some) };
  });
}

function ends(numbers: Numbers | undefined, level: number) {
  const sorted = Float64Array.from(numbers ?? []).sort();
  const side = (1 - level) / 2;
  return { fewest: quantile(sorted, side), most: quantile(sorted, 1 - side) };
}

/** The smallest drawn number that at least a share of the draws stay at or below. */
function quantile(sorted: Numbers, share: number): number {
  return sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)] ?? 0;
}
