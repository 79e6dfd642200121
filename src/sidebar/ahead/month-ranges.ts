import type { AheadAnswer, AheadBatch, AheadRow } from "../../workbook/sidebar-calls";

/** The name under which the script sums all varieties. */
export const ALL = "All";
/** The name under which it sums batches whose variety is blank. */
const BLANK = "(blank)";

/** The varieties of an answer by name, after all together. */
export function varietyChoices({ rows }: AheadAnswer): readonly string[] {
  const names = new Set(rows.map(({ variety }) => variety).filter((name) => name !== ALL));
  return [ALL, ...[...names].sort((a, b) => a.localeCompare(b, "en"))];
}

/** The months of a variety, soonest first. */
export function monthsOf({ rows }: AheadAnswer, variety: string): readonly AheadRow[] {
  return rows
    .filter((row) => row.variety === variety)
    .sort((a, b) => (a.month < b.month ? -1 : a.month > b.month ? 1 : 0));
}

/** The batches that a row counts. */
export function batchesBehind({ batches }: AheadAnswer, row: AheadRow): readonly AheadBatch[] {
  return batches.filter(
    ({ month, variety }) =>
      month === row.month && (row.variety === ALL || (variety || BLANK) === row.variety),
  );
}
