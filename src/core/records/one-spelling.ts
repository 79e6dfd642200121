import { commonestSpellings } from "../names";
import type { Batch, TextFact } from "./batch";

/** The facts that name something: each name is one, however it is spelt. */
export const NAMED_FACTS = [
  "variety",
  "rootstock",
  "method",
  "place",
  "grafter",
  "scionSource",
] as const satisfies readonly TextFact[];

/** The batches with each name in its commonest spelling, so that nobody else has to compare names. */
export function oneSpelling(batches: readonly Batch[]): readonly Batch[] {
  return NAMED_FACTS.reduce((all, fact) => {
    const spellingOf = commonestSpellings(all.map((batch) => batch[fact]));
    // Most nurseries spell a fact in one way, and then no batch is copied.
    if ([...spellingOf].every(([name, spelling]) => name === spelling)) return all;
    return all.map((batch) => ({ ...batch, [fact]: spellingOf.get(batch[fact]) ?? "" }));
  }, batches);
}
