import { commonestSpellings, foldName } from "../names";
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
    const texts = new Set<string>();
    for (const batch of all) texts.add(batch[fact]);
    // Most nurseries spell each name in one way, and then nothing is counted and no batch is copied.
    if (new Set([...texts].map(foldName)).size === texts.size) return all;
    const spellingOf = commonestSpellings(all.map((batch) => batch[fact]));
    if ([...spellingOf].every(([name, spelling]) => name === spelling)) return all;
    return all.map((batch) => ({ ...batch, [fact]: spellingOf.get(batch[fact]) ?? "" }));
  }, batches);
}
