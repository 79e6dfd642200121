import { type Answer, type AnswerValue, columns } from "../answer";
import type { Batch } from "../records/batch";
import { leftOutRemark, type Records } from "../records/records";
import { type BatchBalance, batchBalance } from "./batch-balance";

const COLUMNS = columns({
  Batch: "text",
  "Started with": "count",
  Culled: "count",
  "Given to batches": "count",
  Dispatched: "count",
  "Should stand": "count",
  "Last counted": "count",
  "Counted on": "day",
  Unexplained: "count",
  Remark: "text",
});

/** Where every plant of every batch went, one row a batch. */
export function balanceAnswer(records: Records): Answer {
  return {
    columns: COLUMNS,
    rows: records.batches.map((batch) => rowOf(batch, batchBalance(batch))),
    remark: leftOutRemark(records),
  };
}

function rowOf(batch: Batch, balance: BatchBalance | null): AnswerValue[] {
  if (balance === null) {
    const blank: AnswerValue[] = COLUMNS.map(() => null);
    blank[0] = batch.name;
    blank[9] = "No plants counted yet";
    return blank;
  }
  return [
    batch.name,
    balance.started,
    batch.culled,
    balance.given,
    batch.dispatched,
    balance.shouldStand,
    balance.lastCount,
    balance.countedOn,
    balance.unexplained,
    remarkOn(batch, balance),
  ];
}

function remarkOn(batch: Batch, balance: BatchBalance): string | null {
  const parts: string[] = [];
  if (balance.shouldStand < 0) parts.push("More left than came in");
  else if (balance.unexplained < 0) parts.push("More stand than should");
  if (balance.leftSince > 0 && !batch.closed) {
    parts.push(`${balance.leftSince} left after the count, ${balance.standing} stand`);
  }
  if (batch.closed && balance.lastCount > balance.leftSince) {
    parts.push(`Closed with ${balance.lastCount - balance.leftSince} counted last`);
  }
  return parts.length === 0 ? null : parts.join("; ");
}
