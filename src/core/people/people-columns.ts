import { lazily } from "../lazily";
import { foldName } from "../names";
import type { Batch, Records } from "../records";
import { everyWord, normalText } from "../words";

/** Words in a header that say that its column names people, each between spaces. */
const peopleWords = lazily(() => [
  ...new Set(everyWord(({ facts }) => [...facts.grafter, ...facts.eventPerson]).map(spaced)),
]);
/** Of the different texts of a column, the part that must be names of grafters (our choice). */
const MOSTLY = 0.5;

/**
 * Whether a column of the person's own, such as "Wrapped by", names people: its header says so in
 * one of our languages, or at least half of what stands in it are grafters of these records.
 */
export function namesPeople(
  records: Records,
  header: string,
  textOf: (batch: Batch) => string,
): boolean {
  const words = spaced(normalText(header));
  if (peopleWords().some((word) => words.includes(word))) return true;
  const grafters = new Set(records.batches.map(({ grafter }) => foldName(grafter)));
  const texts = new Set(records.batches.map((batch) => foldName(textOf(batch))));
  grafters.delete("");
  texts.delete("");
  const known = [...texts].filter((text) => grafters.has(text)).length;
  return known > 0 && known >= texts.size * MOSTLY;
}

function spaced(words: string): string {
  return ` ${words} `;
}
