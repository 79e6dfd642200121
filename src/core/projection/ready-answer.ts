import { type Answer, type AnswerValue, columns } from "../answer";
import type { CivilDay } from "../dates/civil-day";
import { firstDayOf, type Month, monthOf, monthText } from "../dates/month";
import type { Batch } from "../records/batch";
import { leftOutRemark } from "../records/records";
import type { DayDistribution } from "../statistics/day-distribution";
import { type Draws, seededDraws } from "../statistics/draws";
import type { Method } from "../timetable/timetable";
import { type BatchState, startOfForecast } from "./batch-state";
import type { DayRange } from "./forecast-days";
import type { PlantRange } from "./forecast-plants";
import type { DrawnShare, Forecaster } from "./forecaster";
import { type Projection, type ProjectionQuestion, project } from "./project";
import { isSilent } from "./silence";

const COLUMNS = columns({
  Month: "text",
  Variety: "text",
  Batches: "count",
  Fewest: "count",
  Likely: "count",
  Most: "count",
});

const ALL = "All";
const SEED = 1;
/** Draws for a nursery of some hundred batches; more batches get fewer, the work stays the same. */
const MOST_DRAWS = 1000;
const FEWEST_DRAWS = 100;
const BATCH_DRAWS = 1_000_000;

/**
 * How many plants will be ready, by month and variety and all together. Plants that are ready
 * already stand in the month of the as-of day; batches forgotten long ago are left out.
 *
 * Method: seeded draws of the whole; each draws once what is unknown of the shares and uses it for
 *   every batch, so that a sum over batches is not falsely sure.
 *
 * @param believing what is believed of batches to come; what the records teach, if left out
 */
export function readyAnswer(question: ProjectionQuestion, believing?: Forecaster): Answer {
  return readyOutlook(question, believing).answer;
}

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

/** The same answer with the batches that its months count, so that both always agree. */
export function readyOutlook(
  question: ProjectionQuestion,
  believing?: Forecaster,
): { readonly answer: Answer; readonly batches: readonly ReadyBatch[] } {
  const projection = project(question, believing);
  const coming = comingBatches(projection, question.asOf);
  const totals = drawTotals(coming, projection.forecaster);
  const rows = rowsOf(totals, coming.batches, question.level);
  return {
    answer: { columns: COLUMNS, rows, remark: leftOutRemark(question.records) },
    batches: coming.batches.map(({ state, likelyMonth, route }) => ({
      batch: state.batch,
      month: monthText(likelyMonth),
      isReady: route === null,
      days: projection.days.range(state, state.method.ready),
      plants: projection.plants(state, state.method.ready),
    })),
  };
}

interface ComingBatch {
  readonly state: BatchState;
  readonly plants: number;
  readonly variety: string;
  /** Which of the routes its plants still have to go; null when ready already. */
  readonly route: number | null;
  /** Chances of the months in which it may be ready. */
  readonly months: readonly MonthChance[];
  readonly likelyMonth: Month;
}

interface MonthChance {
  readonly month: Month;
  /** Chance of this month or an earlier one. */
  readonly upTo: number;
}

/** What is left to pass: many batches share one. */
interface Route {
  readonly method: Method;
  readonly after: number;
  readonly variety: string;
}

interface Coming {
  readonly batches: readonly ComingBatch[];
  readonly routes: readonly Route[];
}

function comingBatches({ batches, days }: Projection, asOf: CivilDay): Coming {
  const states = batches
    .flatMap(({ state }) => (state?.open && !isSilent(state) ? [state] : []))
    // The same batches in any order of rows get the same draws.
    .map((state) => ({ state, key: orderKey(state) }))
    .sort((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : 0));
  const coming: ComingBatch[] = [];
  const routes: Route[] = [];
  const routeOf = new Map<string, number>();
  for (const { state } of states) {
    const { batch, method } = state;
    const start = startOfForecast(state);
    if (start === null) continue;
    const { plants, at: after } = start;
    const variety = batch.variety || "(blank)";
    if (state.reached >= method.ready) {
      const month = monthOf(asOf);
      const months = [{ month, upTo: 1 }];
      coming.push({ state, plants, variety, route: null, months, likelyMonth: month });
      continue;
    }
    const distribution = days.distribution(state, method.ready);
    const likely = days.range(state, method.ready)?.likely;
    if (distribution === null || likely === undefined) continue;
    const key = `${method.name}\n${after}\n${batch.variety}`;
    let route = routeOf.get(key);
    if (route === undefined) {
      route = routes.push({ method, after, variety: batch.variety }) - 1;
      routeOf.set(key, route);
    }
    coming.push({
      state,
      plants,
      variety,
      route,
      months: monthChances(distribution, asOf),
      likelyMonth: monthOf(likely < asOf ? asOf : likely),
    });
  }
  return { batches: coming, routes };
}

function orderKey({ batch, plants, doneOn }: BatchState): string {
  return `${batch.name}\n${batch.variety}\n${plants}\n${doneOn.join()}`;
}

/** Days gathered by month; a day that is past counts as the as-of day's. */
function monthChances({ first, mass }: DayDistribution, asOf: CivilDay): MonthChance[] {
  const chances: { month: Month; upTo: number }[] = [];
  let upTo = 0;
  let monthEnd = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < mass.length; i += 1) {
    upTo += mass[i] as number;
    const day = Math.max(asOf, first + i) as CivilDay;
    if (day >= monthEnd) {
      const month = monthOf(day);
      monthEnd = firstDayOf((month + 1) as Month);
      chances.push({ month, upTo });
    } else (chances[chances.length - 1] as { upTo: number }).upTo = upTo;
  }
  return chances;
}

/** Plants ready by month and variety, one number a draw. */
type Totals = ReadonlyMap<Month, ReadonlyMap<string, Float64Array>>;

function drawTotals({ batches, routes }: Coming, forecaster: Forecaster): Totals {
  const draws = Math.round(
    Math.min(MOST_DRAWS, Math.max(FEWEST_DRAWS, BATCH_DRAWS / Math.max(1, batches.length))),
  );
  const totals = new Map<Month, Map<string, Float64Array>>();
  const numbersOf = (month: Month, variety: string): Float64Array => {
    const byVariety = totals.get(month) ?? new Map<string, Float64Array>();
    totals.set(month, byVariety);
    const numbers = byVariety.get(variety) ?? new Float64Array(draws);
    byVariety.set(variety, numbers);
    return numbers;
  };
  // Looked up once a batch and month, not once a draw.
  const columns = batches.map(({ months, variety }) =>
    months.map(({ month }) => [numbersOf(month, variety), numbersOf(month, ALL)] as const),
  );
  const random = seededDraws(SEED);
  for (let draw = 0; draw < draws; draw += 1) {
    const truth = forecaster.draw(random.uniform);
    const shares = routes.map(({ method, after, variety }) =>
      truth.between(method, after, method.ready, variety),
    );
    batches.forEach((batch, index) => {
      const chance = random.uniform();
      const at = batch.months.findIndex(({ upTo }) => chance < upTo);
      const place = at === -1 ? batch.months.length - 1 : at;
      const plants =
        batch.route === null
          ? batch.plants
          : drawPlants(batch.plants, shares[batch.route] ?? [], random);
      for (const numbers of columns[index]?.[place] ?? []) {
        numbers[draw] = (numbers[draw] as number) + plants;
      }
    });
  }
  return totals;
}

function drawPlants(plants: number, shares: readonly DrawnShare[], random: Draws): number {
  let share = 1;
  for (const { mean, correlation } of shares) share *= random.share(mean, correlation);
  return random.plants(plants, share);
}

function rowsOf(totals: Totals, coming: readonly ComingBatch[], level: number): AnswerValue[][] {
  const side = (1 - level) / 2;
  for (const byVariety of totals.values()) for (const numbers of byVariety.values()) numbers.sort();
  const rangeOf = (month: Month, name: string): readonly [number, number, number] => {
    const sorted = totals.get(month)?.get(name);
    if (sorted === undefined) return [0, 0, 0];
    return [quantile(sorted, side), quantile(sorted, 0.5), quantile(sorted, 1 - side)];
  };
  const isEmpty = (month: Month, name: string) => rangeOf(month, name)[2] === 0;
  const months = [...totals.keys()].filter((month) => !isEmpty(month, ALL)).sort((a, b) => a - b);
  const first = months[0];
  const last = months[months.length - 1];
  if (first === undefined || last === undefined) return [];
  const rows: AnswerValue[][] = [];
  for (let at = first as number; at <= last; at += 1) {
    const month = at as Month;
    const varieties = [...(totals.get(month)?.keys() ?? [])]
      .filter((name) => name !== ALL && !isEmpty(month, name))
      .sort();
    for (const name of [...varieties, ALL]) {
      const batches = coming.filter(
        ({ likelyMonth, variety }) => likelyMonth === month && (name === ALL || variety === name),
      ).length;
      rows.push([monthText(month), name, batches, ...rangeOf(month, name)]);
    }
  }
  return rows;
}

/** The smallest drawn number that at least a share of the draws stay at or below. */
function quantile(sorted: Float64Array, share: number): number {
  return sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)] ?? 0;
}
