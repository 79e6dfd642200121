import type { Batch } from "./batch";

/** Brings the days and counts of a table's batches into the order of all tables' steps. */
export function alignSteps(
  batches: readonly Batch[],
  own: readonly string[],
  all: readonly string[],
): readonly Batch[] {
  if (own.length === all.length && own.every((key, index) => key === all[index])) return batches;
  const indexes = all.map((key) => own.indexOf(key));
  return batches.map((batch) => ({
    ...batch,
    days: indexes.map((index) => (index === -1 ? null : (batch.days[index] ?? null))),
    counts: indexes.map((index) => (index === -1 ? null : (batch.counts[index] ?? null))),
  }));
}
