import type { Kinds } from "../answer";
import { leftOut, type Records } from "../records";
import { type CountedBatch, pooledShares, type ShareInterval } from "../statistics";
import { countIndex } from "./counted-batches";
import type { GroupColumn } from "./group-column";
import { type BatchGroup, groupBatches, groupColumns } from "./grouping";
import { notUsedCounts, type TakesRemark } from "./takes-remark";

export interface SummaryQuestion {
  readonly records: Records;
  /** A column of the records, or several joined with "+". */
  readonly by: string;
  /** Strictly between 0 and 1. */
  readonly level: number;
}

/** The columns of a group's row, behind those that groups are made of. */
export const SUMMARY_COLUMNS = {
  batches: "count",
  grafted: "count",
  taken: "count",
  takeRate: "share",
  from: "share",
  to: "share",
  spread: "number",
  remarks: "text",
} as const satisfies Kinds;

/** The takes of a group's batches together. Shares are 0 to 1; null where nothing is counted. */
export interface SummedTake {
  /** What stands in the columns, in their order; blank text where nothing does. */
  readonly group: readonly string[];
  /** Whose takes are counted. */
  readonly batches: number;
  readonly grafted: number;
  readonly taken: number;
  readonly takeRate: number | null;
  readonly from: number | null;
  readonly to: number | null;
  /** How many times more than chance batches of the group's usual size vary. */
  readonly spread: number | null;
  /** What is left out of the rate, and what the range does not allow for. */
  readonly remarks: readonly TakesRemark[];
}

export interface SummedTakes {
  readonly by: readonly GroupColumn[];
  readonly groups: readonly SummedTake[];
  /** How many times more than chance batches of the usual size of all vary, which alone is 1. */
  readonly spread: number;
  readonly remarks: readonly TakesRemark[];
}

/**
 * Take rates by group: takes over grafts of all the group's batches together, with a range that
 * allows for how much batches of one group differ beyond chance. Batches whose takes are not counted yet are
 * left out of the rate.
 *
 * @throws InputError of a TakesFault
 */
export function summedTakes({ records, by, level }: SummaryQuestion): SummedTakes {
  const grafts = countIndex(records, "grafting");
  const takes = countIndex(records, "take count");
  const columns = groupColumns(by, records);
  const groups = groupBatches(
    records.batches.filter((batch) => (batch.counts[grafts] ?? 0) > 0),
    columns,
  ).map((group) => countGroup(group, grafts, takes));
  const counted = groups.map((group) => group.counted);
  const { groups: shares, spread, isSpreadKnown } = pooledShares(counted, level);
  return {
    by: columns,
    spread,
    remarks: leftOut(records),
    groups: groups.map(({ values, counted, notCounted, impossible }, at): SummedTake => {
      const pooled = shares[at] ?? null;
      return {
        group: values,
        batches: counted.length,
        grafted: total(counted, "grafted"),
        taken: total(counted, "taken"),
        takeRate: pooled?.share ?? null,
        from: pooled?.range.low ?? null,
        to: pooled?.range.high ?? null,
        spread: pooled?.spread ?? null,
        remarks: [
          ...(pooled?.usualBatch ? [usualBatch(pooled.usualSize, pooled.usualBatch)] : []),
          ...notUsedCounts(notCounted, impossible),
          ...(!isSpreadKnown && counted.length > 0 ? [{ code: "one-batch-each" } as const] : []),
        ],
      };
    }),
  };
}

function usualBatch(grafted: number, { low, high }: ShareInterval): TakesRemark {
  return { code: "usual-batch", grafted, low, high };
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

function total(counted: readonly CountedBatch[], what: keyof CountedBatch): number {
  return counted.reduce((all, batch) => all + batch[what], 0);
}
