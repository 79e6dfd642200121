import { foldName } from "./fold-name";

/**
 * The commonest spelling of the name that each text is, by the text; of two as common the first by
 * letters, so that the order of the rows tells nothing. A text that names nothing stays.
 *
 * @example commonestSpellings(["DR 12", "dr12", "DR 12"]).get("dr12") // "DR 12"
 */
export function commonestSpellings(texts: Iterable<string>): ReadonlyMap<string, string> {
  const times = new Map<string, number>();
  for (const text of texts) times.set(text, (times.get(text) ?? 0) + 1);
  const keys = new Map([...times.keys()].map((text) => [text, foldName(text)]));
  const best = new Map<string, string>();
  for (const [text, key] of keys) {
    const before = best.get(key);
    const more = before === undefined ? 1 : of(times, text) - of(times, before);
    if (more > 0 || (more === 0 && text < (before as string))) best.set(key, text);
  }
  return new Map([...keys].map(([text, key]) => [text, (key && best.get(key)) || text]));
}

function of(times: ReadonlyMap<string, number>, text: string): number {
  return times.get(text) ?? 0;
}
