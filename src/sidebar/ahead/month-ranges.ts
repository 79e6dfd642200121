import type { ReadyRow } from "../../core";
import type { AheadAnswer, AheadBatch } from "../../wire/ahead";

/** A variety of the answer: null for all together, '' for batches that name none. */
export type Variety = string | null;

/** The varieties of an answer by name, after all together. */
export function varietyChoices({ rows }: AheadAnswer): readonly Variety[] {
  const names = new Set(rows.flatMap(({ variety }) => (variety === null ? [] : [variety])));
  return [null, ...[...names].sort((a, b) => a.localeCompare(b, "en"))];
}

/** The months of a variety, soonest first. */
export function monthsOf({ rows }: AheadAnswer, variety: Variety): readonly ReadyRow[] {
  return rows
    .filter((row) => row.variety === variety)
    .sort((a, b) => (a.month < b.month ? -1 : a.month > b.month ? 1 : 0));
}

/** The batches that a row counts. */
export function batchesBehind({ batches }: AheadAnswer, row: ReadyRow): readonly AheadBatch[] {
  return batches.filter(
    ({ month, variety }) =>
      month === row.month && (row.variety === null || variety === row.variety),
  );
}
