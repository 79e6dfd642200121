import type { ReadyRow } from "../../core";
import type { AheadAnswer, AheadBatch } from "../../wire/ahead";

/** A variety of the answer: null for all together, '' for batches that name none. */
export type Variety = string | null;

/** The varieties of an answer by name, after all together. */
export function varietyChoices({ rows }: AheadAnswer): readonly Variety[] {
  const names = new Set(rows.flatMap(({ variety }) => (variety === null ? [] : [variety])));
  return [null, ...[...names].sort((a, b) => a.localeCompare(b, "en"))];
}

/** What is ready now of a variety, and its months, soonest first. */
export function monthsOf({ rows }: AheadAnswer, variety: Variety): readonly ReadyRow[] {
  const inTurn = ({ month }: ReadyRow) => (month === "now" ? "" : month);
  return rows
    .filter((row) => row.variety === variety && row.month !== "all")
    .sort((a, b) => (inTurn(a) < inTurn(b) ? -1 : inTurn(a) > inTurn(b) ? 1 : 0));
}

/** All of a variety together; null where there is none. */
export function togetherOf({ rows }: AheadAnswer, variety: Variety): ReadyRow | null {
  return rows.find((row) => row.variety === variety && row.month === "all") ?? null;
}

/** The batches that a row counts. */
export function batchesBehind({ batches }: AheadAnswer, row: ReadyRow): readonly AheadBatch[] {
  return batches.filter(
    ({ month, variety }) =>
      (row.month === "all" || month === row.month) &&
      (row.variety === null || variety === row.variety),
  );
}
