import { type Answer, columns } from "../answer";
import { leftOutRemark } from "../records/records";
import type { ChartReading } from "../statistics/proportion-chart";
import { batchesText } from "./counted-batches";
import { type TakeTrend, type TrendQuestion, takeTrend } from "./take-trend";

/** Written behind a period whose takes are not all counted. */
const STILL_OPEN = ", still open";

const READINGS: Readonly<Record<ChartReading, string>> = {
  usual: "usual",
  low: "low",
  high: "high",
  "drifting down": "drifting down",
  "drifting up": "drifting up",
};

/**
 * Take rates by period of grafting as a table. Batches without a day of grafting are named in the
 * remark.
 *
 * @throws InputError "unknown-column"
 */
export function trendAnswer(question: TrendQuestion): Answer {
  const trend = takeTrend(question);
  return {
    columns: [
      { name: "Period", kind: "text" },
      ...trend.by.map(({ name }) => ({ name, kind: "text" as const })),
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
    rows: trend.periods.map((one) => [
      one.isOpen ? one.period + STILL_OPEN : one.period,
      ...one.group.map((text) => text || "(blank)"),
      ...[one.grafted, one.taken, one.takeRate, one.usualRate, one.low, one.high],
      one.reading === null ? null : READINGS[one.reading],
    ]),
    remark: remarkOn(trend, leftOutRemark(question.records)),
  };
}

function remarkOn({ batches, undated }: TakeTrend, leftOut: string | null): string | null {
  const { notCounted, impossible } = batches;
  const remarks = [
    notCounted.length > 0 ? `${batchesText(notCounted.length)} not counted yet` : null,
    undated > 0 ? `${batchesText(undated)} left out: no day of grafting` : null,
    impossible.length > 0
      ? `${batchesText(impossible.length)} left out: more taken than grafted`
      : null,
    leftOut,
  ].filter((one) => one !== null);
  return remarks.length === 0 ? null : remarks.join(". ");
}
