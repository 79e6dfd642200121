import { madeOnce } from "../made-once";
import { commonestSpellings, foldName } from "../names";
import { type Batch, NAMED_FACTS } from "./batch";
import type { MethodTold, ToldWords } from "./told-words";

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

/** Names that a person calls otherwise, and may have told us so; "Cocoa" too may be called "CC". */
const TOLD_FACTS = [...NAMED_FACTS.filter((fact) => fact !== "method"), "crop"] as const;

/** The batches with our names for the words that were told; each word is looked up once. */
export function asTold(
  batches: readonly Batch[],
  { nameOf, methodOf }: ToldWords,
): readonly Batch[] {
  const named = TOLD_FACTS.reduce((all, fact) => {
    const told = new Map<string, string>();
    for (const batch of all) madeOnce(told, batch[fact], () => nameOf(batch[fact]));
    if ([...told].every(([word, name]) => word === name)) return all;
    return all.map((batch) => ({ ...batch, [fact]: told.get(batch[fact]) ?? "" }));
  }, batches);
  const methods = new Map<string, MethodTold>();
  return named.map((batch) => {
    const { method, crop } = madeOnce(methods, `${batch.crop}\n${batch.method}`, () =>
      methodOf(batch),
    );
    return method === batch.method ? batch : { ...batch, method, crop };
  });
}
