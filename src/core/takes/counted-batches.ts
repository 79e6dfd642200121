import { InputError } from "../faults";
import { type Batch, type Records, stepIndex } from "../records";

/** A batch whose takes were counted. */
export interface TakenBatch {
  readonly batch: Batch;
  /** Above 0. */
  readonly grafted: number;
  /** 0 to grafted. */
  readonly taken: number;
}

export interface CountedBatches {
  readonly counted: readonly TakenBatch[];
  /** Grafted, takes not counted yet. */
  readonly notCounted: readonly Batch[];
  /** More taken than grafted. */
  readonly impossible: readonly Batch[];
}

/** The batches with grafts made, by whether their takes can be used. @throws InputError "no-grafts" | "no-takes" */
export function countedBatches(records: Records): CountedBatches {
  const grafts = countIndex(records, "grafting");
  const takes = countIndex(records, "take count");
  const counted: TakenBatch[] = [];
  const notCounted: Batch[] = [];
  const impossible: Batch[] = [];
  for (const batch of records.batches) {
    const grafted = batch.counts[grafts] ?? 0;
    const taken = batch.counts[takes] ?? null;
    if (grafted <= 0) continue;
    if (taken === null) notCounted.push(batch);
    else if (taken > grafted) impossible.push(batch);
    else counted.push({ batch, grafted, taken });
  }
  return { counted, notCounted, impossible };
}

/** The index of a counted step. @throws InputError "no-grafts" | "no-takes" when the records have none */
export function countIndex(records: Records, key: "grafting" | "take count"): number {
  const index = stepIndex(records, key);
  const counted =
    index !== null &&
    // A table has a column for the counts; a log has lines with some.
    (records.columns.some(
      ({ target }) => target?.kind === "step" && target.key === key && target.what === "count",
    ) ||
      records.batches.some(({ counts }) => counts[index] !== null));
  if (index === null || !counted) {
    throw new InputError({ code: key === "grafting" ? "no-grafts" : "no-takes" });
  }
  return index;
}
