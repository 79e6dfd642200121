import { InputError } from "../input-error";
import type { Batch } from "../records/batch";
import { type Records, stepIndex } from "../records/records";

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

/** The batches with grafts made, by whether their takes can be used. @throws InputError "unknown-column" */
export function countedBatches(records: Records): CountedBatches {
  const grafts = countPlace(records, "grafting", "Grafts made");
  const takes = countPlace(records, "take count", "Takes");
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

/** Sentences on the batches that can't be used, for a closing remark. */
export function notUsedSentences({ notCounted, impossible }: CountedBatches): readonly string[] {
  const sentences: string[] = [];
  if (notCounted.length > 0) sentences.push(`${batchesText(notCounted.length)} not counted yet`);
  if (impossible.length > 0) {
    sentences.push(`${batchesText(impossible.length)} left out: more taken than grafted`);
  }
  return sentences;
}

export function batchesText(count: number): string {
  return count === 1 ? "1 batch" : `${count} batches`;
}

/** The place of a counted step. @throws InputError "unknown-column" when the records have none */
export function countPlace(records: Records, key: string, name: string): number {
  const place = stepIndex(records, key);
  const counted =
    place !== null &&
    // A table has a column for the counts; a log has lines with some.
    (records.columns.some(
      ({ target }) => target?.kind === "step" && target.key === key && target.what === "count",
    ) ||
      records.batches.some(({ counts }) => counts[place] !== null));
  if (place === null || !counted) {
    throw new InputError("unknown-column", `records has no column for ${name}`);
  }
  return place;
}
