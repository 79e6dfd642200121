import { lazily } from "../lazily";
import { nearAlike } from "../names";
import { initialsOf, peopleOf } from "../people";
import { FACT_NAMES, NAMED_FACTS, type Records, type Trouble } from "../records";

/** Two names of one column that may be one, with how many batches bear each. */
export interface NearPair {
  readonly fact: Exclude<(typeof NAMED_FACTS)[number], "method">;
  readonly rare: string;
  readonly batches: number;
  readonly common: string;
  readonly others: number;
}

/** Near-alike names of each column of names, but those that were told to be two. */
export function nearPairs({ batches, words }: Records): readonly NearPair[] {
  return NAMED_FACTS.flatMap((fact) => {
    // A method is one of the timetable's, or asked about by itself.
    if (fact === "method") return [];
    const borne = new Map<string, { batches: number }>();
    for (const batch of batches) {
      const name = batch[fact];
      if (name === "") continue;
      const so = borne.get(name);
      if (so === undefined) borne.set(name, { batches: 1 });
      else so.batches += 1;
    }
    const of = (name: string) => borne.get(name)?.batches ?? 0;
    const open = nearAlike([...borne.keys()]).filter((pair) => words?.isApart(...pair) !== true);
    return open.map((pair): NearPair => {
      const [one, other] = pair;
      const [rare, common] = of(one) > of(other) ? [other, one] : [one, other];
      return { fact, rare, batches: of(rare), common, others: of(common) };
    });
  });
}

/**
 * The same, for a list of troubles, one for each batch of the rarer name, which is the one found. People are
 * called by their initials: the list stands in a tab that everybody sees, and its rows lead to the names.
 */
export function nearNames(records: Records): Trouble[] {
  const initials = lazily(() => initialsOf(peopleOf(records)));
  return nearPairs(records).flatMap(({ fact, rare, batches, common, others }): Trouble[] => {
    const match = records.columns.find(
      ({ target }) => target?.kind === "fact" && target.fact === fact,
    );
    const called = (name: string) => (fact === "grafter" ? initials()(name) : name);
    return records.batches
      .filter((batch) => batch[fact] === rare)
      .map(({ row }) => ({
        row,
        column: match?.header ?? FACT_NAMES[fact],
        found: called(rare),
        code: "near-alike",
        batches,
        name: called(common),
        others,
      }));
  });
}
