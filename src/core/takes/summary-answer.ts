import { type Answer, type AnswerValue, columns } from "../answer";
import { leftOutRemark, type Records } from "../records/records";
import { batchSpread, type CountedBatch } from "../statistics/batch-spread";
import { wilsonInterval } from "../statistics/wilson-interval";
import { batchesText, countPlace } from "./counted-batches";
import { type BatchGroup, groupBatches, groupColumns } from "./grouping";

export interface SummaryQuestion {
  readonly records: Records;
  /** A column of the records, or several joined with "+". */
  readonly by: string;
  /** Strictly between 0 and 1. */
  readonly level: number;
}

/**
 * Take rates by group: takes over grafts of all the group's batches together, with a range widened
 * by how much batches of one group differ beyond chance.
 *
 * Batches whose takes are not counted yet are left out of the rate and named in the remark.
 *
 * @throws InputError "unknown-column", also when the records have no grafts or no takes
 */
export function summaryAnswer({ records, by, level }: SummaryQuestion): Answer {
  const grafts = countPlace(records, "grafting", "Grafts made");
  const takes = countPlace(records, "take count", "Takes");
  const by_ = groupColumns(by, records);
  const groups = groupBatches(
    records.batches.filter((batch) => (batch.counts[grafts] ?? 0) > 0),
    by_,
  ).map((group) => countGroup(group, grafts, takes));
  const spread = batchSpread(groups.map((group) => group.counted));
  const rows = groups.map((group): AnswerValue[] => {
    const grafted = total(group.counted, "grafted");
    const taken = total(group.counted, "taken");
    const range =
      grafted === 0
        ? null
        : wilsonInterval({
            successes: taken / spread.factor,
            trials: grafted / spread.factor,
            level,
          });
    return [
      ...group.values.map((value) => value || "(blank)"),
      group.counted.length,
      grafted,
      taken,
      grafted === 0 ? null : taken / grafted,
      range?.low ?? null,
      range?.high ?? null,
      spread.factor,
      remarkOn(group, spread.degreesOfFreedom),
    ];
  });
  return {
    // A column may be asked for twice, so the group columns are no keys of one object.
    columns: [
      ...by_.map(({ name }) => ({ name, kind: "text" as const })),
      ...columns({
        Batches: "count",
        Grafted: "count",
        Taken: "count",
        "Take rate": "share",
        From: "share",
        To: "share",
        "Batch spread": "number",
        Remark: "text",
      }),
    ],
    rows,
    remark: leftOutRemark(records),
  };
}

interface CountedGroup {
  readonly values: readonly string[];
  readonly counted: readonly CountedBatch[];
  readonly notCounted: number;
  readonly impossible: number;
}

function countGroup(group: BatchGroup, grafts: number, takes: number): CountedGroup {
  const counted: CountedBatch[] = [];
  let notCounted = 0;
  let impossible = 0;
  for (const batch of group.batches) {
    const grafted = batch.counts[grafts] as number;
    const taken = batch.counts[takes] ?? null;
    if (taken === null) notCounted += 1;
    else if (taken > grafted) impossible += 1;
    else counted.push({ grafted, taken });
  }
  return { values: group.values, counted, notCounted, impossible };
}

function remarkOn(group: CountedGroup, degreesOfFreedom: number): string | null {
  const parts: string[] = [];
  if (group.notCounted > 0) parts.push(`${batchesText(group.notCounted)} not counted yet`);
  if (group.impossible > 0) {
    parts.push(`${batchesText(group.impossible)} left out: more taken than grafted`);
  }
  if (degreesOfFreedom === 0 && group.counted.length > 0) {
    parts.push(
      "One batch a group: how much batches differ can't be told, the range may be too narrow",
    );
  }
  return parts.length === 0 ? null : parts.join("; ");
}

function total(counted: readonly CountedBatch[], what: keyof CountedBatch): number {
  return counted.reduce((all, batch) => all + batch[what], 0);
}
