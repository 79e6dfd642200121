import { type Answer, type AnswerValue, columns } from "../answer";
import type { CivilDay } from "../dates/civil-day";
import type { Batch } from "../records/batch";
import { leftOutRemark, type Records, stepPlace } from "../records/records";
import { proportionChart } from "../statistics/proportion-chart";
import { batchesText, type CountedBatches, countedBatches } from "./counted-batches";
import { groupBatches, groupColumns } from "./grouping";
import { type Period, periodText } from "./periods";

export interface TrendQuestion {
  readonly records: Records;
  readonly period: Period;
  /** A column whose groups are each followed on their own, or several joined with "+"; null for all together. */
  readonly by: string | null;
}

/** Takes that were not counted so many days before the last recorded day are not waited for (our choice). */
const LONGEST_WAIT_DAYS = 90;
/** Written behind a period whose takes are not all counted. */
export const STILL_OPEN = ", still open";

/**
 * Take rates by period of grafting, against the usual rate and the limits within which periods
 * vary as they always have.
 *
 * A period is still open when it holds the last grafting day, or batches whose takes may still be
 * counted: its reading may change. Batches without a day of grafting are named in the remark.
 *
 * @throws InputError "unknown-column"
 */
export function trendAnswer({ records, period, by }: TrendQuestion): Answer {
  const batches = countedBatches(records);
  const grafting = stepPlace(records, "grafting") as number;
  const dayOf = (batch: Batch) => batch.days[grafting] ?? null;
  const by_ = by === null ? [] : groupColumns(by, records);
  const isOpen = openPeriods(records, batches, period, dayOf);
  const countsOf = new Map(batches.counted.map((one) => [one.batch, one]));
  const dated = [...countsOf.keys(), ...batches.notCounted].filter((one) => dayOf(one) !== null);
  const undated = batches.counted.filter(({ batch }) => dayOf(batch) === null).length;
  const rows = groupBatches(dated, by_).flatMap((group): AnswerValue[][] => {
    const sums = new Map<string, { grafted: number; taken: number }>();
    for (const batch of group.batches) {
      const name = periodText(period, dayOf(batch) as CivilDay);
      const sum = sums.get(name) ?? { grafted: 0, taken: 0 };
      const counts = countsOf.get(batch);
      sum.grafted += counts?.grafted ?? 0;
      sum.taken += counts?.taken ?? 0;
      sums.set(name, sum);
    }
    const names = [...sums.keys()].sort();
    const counted = names.filter((name) => (sums.get(name)?.grafted ?? 0) > 0);
    const chart = proportionChart(
      counted.map((name) => sums.get(name) as { grafted: number; taken: number }),
    );
    return names.map((name) => {
      const shown = [
        isOpen(name) ? name + STILL_OPEN : name,
        ...group.values.map((value) => value || "(blank)"),
      ];
      const place = counted.indexOf(name);
      // What nobody counted is blank, not 0.
      if (chart === null || place === -1) {
        return [...shown, null, null, null, chart?.centre ?? null, null, null, null];
      }
      const { grafted, taken } = sums.get(name) as { grafted: number; taken: number };
      const limits = chart.limits[place];
      return [
        ...shown,
        ...[grafted, taken, taken / grafted, chart.centre],
        ...[limits?.low ?? null, limits?.high ?? null, chart.readings[place] ?? null],
      ];
    });
  });
  return {
    columns: [
      { name: "Period", kind: "text" },
      ...by_.map(({ name }) => ({ name, kind: "text" as const })),
      ...columns({
        Grafted: "count",
        Taken: "count",
        "Take rate": "share",
        "Usual rate": "share",
        "Lower limit": "share",
        "Upper limit": "share",
        Reading: "text",
      }),
    ],
    rows,
    remark: remarkOn(records, batches, undated),
  };
}

/** Periods of which takes are still to come. */
function openPeriods(
  records: Records,
  { counted, notCounted }: CountedBatches,
  period: Period,
  dayOf: (batch: Batch) => CivilDay | null,
): (name: string) => boolean {
  const takeCount = stepPlace(records, "take count");
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

function remarkOn(records: Records, batches: CountedBatches, undated: number): string | null {
  const { notCounted, impossible } = batches;
  const remarks = [
    notCounted.length > 0 ? `${batchesText(notCounted.length)} not counted yet` : null,
    undated > 0 ? `${batchesText(undated)} left out: no day of grafting` : null,
    impossible.length > 0
      ? `${batchesText(impossible.length)} left out: more taken than grafted`
      : null,
    leftOutRemark(records),
  ].filter((one) => one !== null);
  return remarks.length === 0 ? null : remarks.join(". ");
}
