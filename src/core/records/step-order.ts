import type { Batch } from "./batch";

/** Brings the days and counts of a table's batches into the order of all tables' steps. */
export function alignSteps(
  batches: readonly Batch[],
  own: readonly string[],
  all: readonly string[],
): readonly Batch[] {
  if (own.length === all.length && own.every((key, place) => key === all[place])) return batches;
  const places = all.map((key) => own.indexOf(key));
  return batches.map((batch) => ({
    ...batch,
    days: places.map((place) => (place === -1 ? null : (batch.days[place] ?? null))),
    counts: places.map((place) => (place === -1 ? null : (batch.counts[place] ?? null))),
  }));
}
