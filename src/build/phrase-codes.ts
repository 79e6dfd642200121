import path from "node:path";

/** The code of the first phrase; all are letters of two bytes that stand in no word. */
const FIRST_PHRASE = "ƀ";
const CODES = /[ƀ-ʯ]/;
const MOST_PHRASES = 300;
const LONGEST_PHRASE = 60;
/** Shorter ones spare hardly anything, and of them there are most: each is undone at every load. */
const SHORTEST_PHRASE = 5;
const CODE_BYTES = 2;
/** Between two phrases: no code, and in no word. */
const BETWEEN_PHRASES = "`";

/** Texts in which a code stands for a phrase. */
export interface PhraseCoded {
  readonly texts: readonly string[];
  readonly phrases: readonly string[];
}

/**
 * Texts made shorter by codes for phrases that come again and again; the one that spares most goes first.
 * What undoes it is one search for codes: every formula does it, and codes within codes, which would spare
 * a fifth more, take three times as long.
 *
 * @param leastSpared bytes for which a code is worth the time to undo it
 * @throws Error when a text holds such a code
 */
export function phraseCoded(texts: readonly string[], leastSpared = 1): PhraseCoded {
  const first = FIRST_PHRASE.charCodeAt(0);
  let all = texts.join(BETWEEN_PHRASES);
  if (CODES.test(all) || texts.some((text) => text.includes(BETWEEN_PHRASES))) {
    throw new Error("a text holds what stands for phrases");
  }
  const spared = (phrase: string, times: number) =>
    (phrase.length - CODE_BYTES) * times - phrase.length - 1;
  const times = new Map<string, number>();
  for (let at = 0; at < all.length; at += 1) {
    for (let length = SHORTEST_PHRASE; length <= LONGEST_PHRASE; length += 1) {
      const phrase = all.slice(at, at + length);
      if (phrase.length < length || phrase.includes(BETWEEN_PHRASES)) break;
      times.set(phrase, (times.get(phrase) ?? 0) + 1);
    }
  }
  const list = [...times]
    .map(([phrase, count]) => ({ phrase, spares: spared(phrase, count) }))
    .filter(({ spares }) => spares >= leastSpared)
    .sort((a, b) => b.spares - a.spares);
  const phrases: string[] = [];
  while (phrases.length < MOST_PHRASES && list.length > 0) {
    const one = list.shift() as (typeof list)[number];
    // Others may have taken what it stood in, so that it spares less than it did.
    const spares = spared(one.phrase, all.split(one.phrase).length - 1);
    if (spares < leastSpared) continue;
    if (spares < (list[0]?.spares ?? 0)) {
      const at = list.findIndex((other) => other.spares <= spares);
      list.splice(at === -1 ? list.length : at, 0, { ...one, spares });
      continue;
    }
    all = all.replaceAll(one.phrase, () => String.fromCharCode(first + phrases.length));
    phrases.push(one.phrase);
  }
  return { texts: all.split(BETWEEN_PHRASES), phrases };
}

/** The import of what undoes the codes, and the phrases that it is told, as source. */
export function spelling({ phrases }: PhraseCoded): string {
  return `
import { spellOut } from ${JSON.stringify(path.resolve("src/build/spell-out.ts"))};
const phrases = ${JSON.stringify(phrases.join(BETWEEN_PHRASES))}.split("${BETWEEN_PHRASES}");`;
}
