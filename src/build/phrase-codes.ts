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
  // The phrases under what they spare. What was taken since leaves a phrase fewer places, so that one counted
  // anew moves down, and whatever stands highest with its number true is the best.
  const waiting: string[][] = [];
  const wait = (phrase: string, count: number) => {
    const spares = spared(phrase, count);
    if (spares < leastSpared) return;
    waiting[spares] ??= [];
    waiting[spares].push(phrase);
  };
  for (const [phrase, count] of repeated(all)) wait(phrase, count);
  const phrases: string[] = [];
  for (let spares = waiting.length - 1; spares >= leastSpared; spares -= 1) {
    while (phrases.length < MOST_PHRASES) {
      const phrase = waiting[spares]?.pop();
      if (phrase === undefined) break;
      const count = countOf(phrase, all);
      if (spared(phrase, count) < spares) {
        wait(phrase, count);
        continue;
      }
      all = all.replaceAll(phrase, String.fromCharCode(first + phrases.length));
      phrases.push(phrase);
    }
  }
  return { texts: all.split(BETWEEN_PHRASES), phrases };
}

/** The phrases that come more than once, each with how often, overlaps counted; the longest first. */
function repeated(text: string): readonly (readonly [string, number])[] {
  const found: (readonly [string, number])[] = [];
  let starts = Array.from(text, (_, at) => at);
  for (let length = SHORTEST_PHRASE; length <= LONGEST_PHRASE; length += 1) {
    const times = new Map<string, number>();
    const phraseAt = (at: number) => text.slice(at, at + length);
    starts = starts.filter((at) => {
      const phrase = phraseAt(at);
      const isOne = phrase.length === length && !phrase.includes(BETWEEN_PHRASES);
      if (isOne) times.set(phrase, (times.get(phrase) ?? 0) + 1);
      return isOne;
    });
    // What comes once does so with more behind it, too.
    starts = starts.filter((at) => (times.get(phraseAt(at)) ?? 0) > 1);
    for (const one of times) if (one[1] > 1) found.push(one);
  }
  return found.reverse();
}

/** How often a phrase stands in a text without overlapping itself. */
function countOf(phrase: string, text: string): number {
  let count = 0;
  for (let at = text.indexOf(phrase); at !== -1; at = text.indexOf(phrase, at + phrase.length)) {
    count += 1;
  }
  return count;
}

/** The import of what undoes the codes, and the phrases that it is told, as source. */
export function spelling({ phrases }: PhraseCoded): string {
  return `
import { spellOut } from ${JSON.stringify(path.resolve("src/build/spell-out.ts"))};
const phrases = ${JSON.stringify(phrases.join(BETWEEN_PHRASES))}.split("${BETWEEN_PHRASES}");`;
}
