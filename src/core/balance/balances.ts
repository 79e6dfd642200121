import { blankRow, type Kinds, type RowOf } from "../answer";
import { totalOf } from "../mathematics";
import { type Batch, type LeftOut, leftOut, type Records } from "../records";
import { methodFinder, type Timetable } from "../timetable";
import { type BatchBalance, batchBalance } from "./batch-balance";
import type { LossStage } from "./stage-losses";

export const BALANCE_COLUMNS = {
  batch: "text",
  started: "count",
  culled: "count",
  given: "count",
  dispatched: "count",
  shouldStand: "count",
  lastCount: "count",
  countedOn: "day",
  unexplained: "count",
  remarks: "text",
  notComeUp: "count",
  gradedOut: "count",
  notTaken: "count",
  lostLater: "count",
  between: "count",
} as const satisfies Kinds;

/** What is to be said of a batch's balance. */
export type BalanceRemark =
  | { readonly code: "no-plants-counted" }
  /** More plants left than came in. */
  | { readonly code: "more-left-than-came" }
  | { readonly code: "more-stand-than-should" }
  | { readonly code: "left-after-count"; readonly left: number; readonly standing: number }
  /** Closed while plants of the last count are not accounted for. */
  | { readonly code: "closed-with"; readonly plants: number };

/** Where the plants of a batch went; all null where none were ever counted. */
export type BalanceRow = RowOf<
  typeof BALANCE_COLUMNS,
  { readonly batch: string; readonly remarks: readonly BalanceRemark[] }
>;

export interface Balances {
  readonly rows: readonly BalanceRow[];
  readonly remarks: readonly LeftOut[];
}

/** Where every plant of every batch went, one row a batch. */
export function balances(records: Records, timetable: Timetable): Balances {
  const methodOf = methodFinder(timetable);
  const { stepKeys } = records;
  return {
    rows: records.batches.map((batch) =>
      rowOf(batch, batchBalance(batch, { stepKeys, method: methodOf(batch) })),
    ),
    remarks: leftOut(records),
  };
}

function rowOf(batch: Batch, balance: BatchBalance | null): BalanceRow {
  if (balance === null) {
    const remarks = [{ code: "no-plants-counted" } as const];
    return { ...blankRow(BALANCE_COLUMNS), batch: batch.name, remarks };
  }
  const { started, given, shouldStand, lastCount, countedOn, unexplained, losses } = balance;
  const lostAt = (stage: LossStage) =>
    totalOf(losses.map((one) => (one.stage === stage ? one.lost : 0)));
  return {
    batch: batch.name,
    started,
    culled: batch.culled,
    given,
    dispatched: batch.dispatched,
    shouldStand,
    lastCount,
    countedOn,
    unexplained,
    remarks: remarksOn(batch, balance),
    notComeUp: lostAt("not-come-up"),
    gradedOut: lostAt("graded-out"),
    notTaken: lostAt("not-taken"),
    lostLater: lostAt("lost-later"),
    between: lostAt("between"),
  };
}

function remarksOn(batch: Batch, balance: BatchBalance): readonly BalanceRemark[] {
  const { shouldStand, unexplained, leftSince, standing, lastCount } = balance;
  const remarks: BalanceRemark[] = [];
  if (shouldStand < 0) remarks.push({ code: "more-left-than-came" });
  else if (unexplained < 0) remarks.push({ code: "more-stand-than-should" });
  if (leftSince > 0 && !batch.closed) {
    remarks.push({ code: "left-after-count", left: leftSince, standing });
  }
  if (batch.closed && lastCount > leftSince) {
    remarks.push({ code: "closed-with", plants: lastCount - leftSince });
  }
  return remarks;
}
