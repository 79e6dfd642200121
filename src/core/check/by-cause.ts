import { costOf, lastCounted, type Records, type Trouble } from "../records";

/** Equal troubles of one column, which have one cause. */
export interface TroubleEntry {
  /** One at least, from the top of the table down. */
  readonly troubles: readonly Trouble[];
  /** Plants at the last count of the batches in these rows; of all batches where it is about no row. */
  readonly plants: number;
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

/**
 * Troubles by their cause: those that cost most first, within them those with the most plants at stake,
 * then from the top of the table down.
 */
export function byCause(troubles: readonly Trouble[], records: Records): TroubleEntry[] {
  const plantsIn = new Map<number, number>();
  let all = 0;
  for (const batch of records.batches) {
    const last = lastCounted(batch);
    const plants = last === null ? 0 : (batch.counts[last] as number);
    plantsIn.set(batch.row, (plantsIn.get(batch.row) ?? 0) + plants);
    all += plants;
  }
  const causes = new Map<string, Trouble[]>();
  troubles.forEach((trouble, at) => {
    const key = trouble.row === null ? String(at) : causeOf(trouble);
    const equal = causes.get(key);
    if (equal === undefined) causes.set(key, [trouble]);
    else equal.push(trouble);
  });
  const entries = [...causes.values()].map((equal): TroubleEntry => {
    const rows = new Set(equal.map(({ row }) => row));
    let plants = 0;
    for (const row of rows) plants += row === null ? all : (plantsIn.get(row) ?? 0);
    return { troubles: equal.sort((a, b) => (a.row ?? 0) - (b.row ?? 0)), plants };
  });
  const first = ({ troubles: [one] }: TroubleEntry) => one as Trouble;
  return entries.sort(
    (a, b) =>
      costOf(first(a)) - costOf(first(b)) ||
      b.plants - a.plants ||
      (first(a).row ?? 0) - (first(b).row ?? 0),
  );
}

/** What tells causes apart; a readAs of a column is none. */
interface Apart {
  readonly step?: string;
  readonly why?: { readonly code: string };
  readonly readAs?: { readonly code?: string };
  readonly as?: string;
}

function causeOf(trouble: Trouble): string {
  const { code, column, found } = trouble;
  const { step, why, readAs, as } = trouble as Apart;
  const text = BY_TEXT.has(code) ? found : "";
  return [code, column, step, why?.code, readAs?.code, as, text].join("\n");
}
