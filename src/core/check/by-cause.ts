import { COST, costOf, lastCounted, likeName, type Records, type Trouble } from "../records";

/** Equal troubles of one column, which have one cause. */
export interface TroubleEntry {
  /** One at least, from the top of the table down. */
  readonly troubles: readonly Trouble[];
  /**
   * Plants at the last counts of the batches about which something is lost or in doubt; null where none are
   * known, or nothing is at stake: what is used, in a reading that is said.
   */
  readonly plants: number | null;
}

/** What has its cause in the text that was found: each text is another cause. */
const BY_TEXT = new Set<Trouble["code"]>([
  "no-such-method",
  "several-methods",
  "no-such-lot",
  "lots-in-a-circle",
  "lot-overdrawn",
  "same-name",
  "nearly-same-name",
  "batch-not-in-table",
  "batch-spelt-otherwise",
  "line-without-step",
  "near-alike",
]);

/** Troubles by their cause: most plants at stake first, those of which none are known last. */
export function byCause(troubles: readonly Trouble[], records: Records): TroubleEntry[] {
  if (troubles.length === 0) return [];
  const causes = new Map<string, Trouble[]>();
  troubles.forEach((trouble, at) => {
    const key = trouble.row === null ? String(at) : causeOf(trouble);
    const equal = causes.get(key);
    if (equal === undefined) causes.set(key, [trouble]);
    else equal.push(trouble);
  });
  const plantsOf = plantsAtStake(records);
  const entries = [...causes.values()].map(
    (equal): TroubleEntry => ({
      troubles: equal.sort((a, b) => (a.row ?? 0) - (b.row ?? 0)),
      plants: plantsOf(equal),
    }),
  );
  const first = ({ troubles: [one] }: TroubleEntry) => one as Trouble;
  const known = ({ plants }: TroubleEntry) => plants ?? -1;
  return entries.sort(
    (a, b) =>
      known(b) - known(a) ||
      costOf(first(a)) - costOf(first(b)) ||
      (first(a).row ?? 0) - (first(b).row ?? 0),
  );
}

/** About every batch, though it stands in no row. */
const OF_ALL = new Set<Trouble["code"]>(["no-batch-column", "no-such-header", "timetable"]);

/** Counts the plants in the rows of equal troubles, or under the column that they are about. */
function plantsAtStake(records: Records): (equal: readonly Trouble[]) => number | null {
  const { batches, columns, lines } = records;
  const plantsIn = new Map<number, number>();
  const plantsOfName = new Map<string, number>();
  for (const batch of batches) {
    const last = lastCounted(batch);
    if (last === null) continue;
    const plants = batch.counts[last] as number;
    plantsIn.set(batch.row, plants);
    if (lines.length > 0) plantsOfName.set(likeName(batch.name), plants);
  }
  for (const { row, batch } of lines) {
    const plants = plantsOfName.get(likeName(batch));
    if (plants !== undefined) plantsIn.set(row, plants);
  }
  const sum = (rows: Iterable<number>): number | null => {
    let plants: number | null = null;
    for (const row of rows) {
      const here = plantsIn.get(row);
      if (here !== undefined) plants = (plants ?? 0) + here;
    }
    return plants;
  };
  return (equal) => {
    const one = equal[0] as Trouble;
    if (costOf(one) === COST.reading) return null;
    if (one.row !== null) return sum(new Set(equal.map(({ row }) => row as number)));
    if (OF_ALL.has(one.code)) return sum(batches.map(({ row }) => row));
    // What a column of somebody's own holds is nothing that an answer lacks.
    if (one.code === "column-left" && one.others.length === 0) return null;
    const under = columns.filter(({ header }) => header === one.column);
    return sum(
      batches.flatMap((batch) =>
        under.some(
          ({ table, column }) => table === batch.table && records.textIn(batch, column) !== "",
        )
          ? batch.row
          : [],
      ),
    );
  };
}

/** What tells causes apart; a readAs of a column is none. */
interface Apart {
  readonly step?: string;
  readonly fewest?: number;
  readonly name?: string;
  readonly weekday?: number;
  readonly why?: { readonly code: string };
  readonly readAs?: { readonly code?: string };
  readonly as?: string;
}

function causeOf(trouble: Trouble): string {
  const { code, column, found } = trouble;
  const { step, fewest, name, weekday, why, readAs, as } = trouble as Apart;
  const text = BY_TEXT.has(code) ? found : "";
  const apart = [step, fewest, name, weekday, why?.code, readAs?.code, as, text];
  return [code, column, ...apart].join("\n");
}
