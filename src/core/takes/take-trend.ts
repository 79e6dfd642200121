import type { Kinds } from "../answer";
import type { CivilDay } from "../dates";
import { type Batch, leftOut, type Records, stepIndex } from "../records";
import { type ChartReading, proportionChart } from "../statistics";
import { type CountedBatches, countedBatches } from "./counted-batches";
import type { GroupColumn } from "./group-column";
import { type BatchGroup, groupBatches, groupColumns } from "./grouping";
import { type Period, periodText } from "./periods";
import { notUsed, type TakesRemark } from "./takes-remark";

export interface TrendQuestion {
  readonly records: Records;
  readonly period: Period;
  /** A column whose groups are each followed on their own, or several joined with "+"; null for all together. */
  readonly by: string | null;
}

/** The columns of a period's row, behind the period and the columns that groups are made of. */
export const TREND_COLUMNS = {
  grafted: "count",
  taken: "count",
  takeRate: "share",
  usualRate: "share",
  low: "share",
  high: "share",
  reading: "text",
} as const satisfies Kinds;

/** The takes of a period of grafting. Shares are 0 to 1; null where nothing is counted, which is not 0. */
export interface TrendPeriod {
  /** Text that sorts by time, such as "2026-11"; see periods.ts. */
  readonly period: string;
  /** Whether takes of it may still be counted, so that its reading may change. */
  readonly isOpen: boolean;
  /** What stands in the columns of groups; blank text where nothing does. */
  readonly group: readonly string[];
  readonly grafted: number | null;
  readonly taken: number | null;
  readonly takeRate: number | null;
  /** The rate of all periods of the group. */
  readonly usualRate: number | null;
  /** Limits within which periods vary as they always have. */
  readonly low: number | null;
  readonly high: number | null;
  readonly reading: ChartReading | null;
}

export interface TakeTrend {
  readonly by: readonly GroupColumn[];
  /** By group, then by time. */
  readonly periods: readonly TrendPeriod[];
  /** Also on counted batches without a day of grafting, which are in no period. */
  readonly remarks: readonly TakesRemark[];
}

/** Takes that were not counted so many days before the last recorded day are not waited for (our choice). */
const LONGEST_WAIT_DAYS = 90;

/**
 * Take rates by period of grafting, against the usual rate and the limits within which periods
 * vary as they always have.
 *
 * A period is still open when it holds the last grafting day, or batches whose takes may still be
 * counted.
 *
 * @throws InputError of a TakesFault
 */
export function takeTrend({ records, period, by }: TrendQuestion): TakeTrend {
  const batches = countedBatches(records);
  const grafting = stepIndex(records, "grafting") as number;
  const dayOf = (batch: Batch) => batch.days[grafting] ?? null;
  const columns = by === null ? [] : groupColumns(by, records);
  const isOpen = openPeriods(records, { batches, period, dayOf });
  const countsOf = new Map(batches.counted.map((one) => [one.batch, one]));
  const dated = [...countsOf.keys(), ...batches.notCounted].filter((one) => dayOf(one) !== null);
  const undated = batches.counted.filter(({ batch }) => dayOf(batch) === null).length;
  return {
    by: columns,
    remarks: [
      ...notUsed(batches),
      ...(undated > 0 ? [{ code: "no-grafting-day", batches: undated } as const] : []),
      ...leftOut(records),
    ],
    periods: groupBatches(dated, columns).flatMap((group) => {
      const sums = new Map<string, { grafted: number; taken: number }>();
      for (const batch of group.batches) {
        const name = periodText(period, dayOf(batch) as CivilDay);
        const sum = sums.get(name) ?? { grafted: 0, taken: 0 };
        const counts = countsOf.get(batch);
        sum.grafted += counts?.grafted ?? 0;
        sum.taken += counts?.taken ?? 0;
        sums.set(name, sum);
      }
      return periodsOf(group, sums, isOpen);
    }),
  };
}

function periodsOf(
  { values }: BatchGroup,
  sums: ReadonlyMap<string, { readonly grafted: number; readonly taken: number }>,
  isOpen: (name: string) => boolean,
): readonly TrendPeriod[] {
  const inOrder = [...sums].sort(([a], [b]) => (a < b ? -1 : 1));
  const counted = inOrder.filter(([, { grafted }]) => grafted > 0);
  const chart = proportionChart(counted.map(([, sum]) => sum));
  const indexOf = new Map(counted.map(([name], index) => [name, index]));
  return inOrder.map(([name, { grafted, taken }]): TrendPeriod => {
    const index = indexOf.get(name) ?? null;
    const isCounted = chart !== null && index !== null;
    const limits = isCounted ? chart.limits[index] : undefined;
    return {
      period: name,
      isOpen: isOpen(name),
      group: values,
      grafted: isCounted ? grafted : null,
      taken: isCounted ? taken : null,
      takeRate: isCounted ? taken / grafted : null,
      usualRate: chart?.centre ?? null,
      low: limits?.low ?? null,
      high: limits?.high ?? null,
      reading: isCounted ? (chart.readings[index] ?? null) : null,
    };
  });
}

/** Periods of which takes are still to come. */
function openPeriods(
  records: Records,
  {
    batches: { counted, notCounted },
    period,
    dayOf,
  }: {
    readonly batches: CountedBatches;
    readonly period: Period;
    readonly dayOf: (batch: Batch) => CivilDay | null;
  },
): (name: string) => boolean {
  const takeCount = stepIndex(records, "take count");
  let lastGrafting: CivilDay | null = null;
  let lastDay: CivilDay | null = null;
  const later = (one: CivilDay | null, other: CivilDay | null) =>
    one === null || (other !== null && other > one) ? other : one;
  for (const batch of [...counted.map((one) => one.batch), ...notCounted]) {
    lastGrafting = later(lastGrafting, dayOf(batch));
  }
  lastDay = lastGrafting;
  for (const { batch } of counted) {
    lastDay = later(lastDay, takeCount === null ? null : (batch.days[takeCount] ?? null));
  }
  const open = new Set<string>();
  if (lastGrafting !== null) open.add(periodText(period, lastGrafting));
  for (const batch of notCounted) {
    const day = dayOf(batch);
    if (day === null || batch.closed || (lastDay as CivilDay) - day > LONGEST_WAIT_DAYS) continue;
    open.add(periodText(period, day));
  }
  return (name) => open.has(name);
}
