/** Characters that stand in no word: those have small letters, 1, 0, spaces, commas and the signs of "nothing". */
const CODES = "ABCDEFGHIJKLMNOPQRSTUVWXYZ23456789!#$%&'()*+./:;<=>@[]^_{}~";

const PRINTED = Array.from({ length: 94 }, (_, at) => String.fromCharCode(at + 33)).join("");
/** Stand in the written form of a text by themselves, or between phrases. */
const KEPT = "\"'\\`";

/** What may be a code in a text: the printed signs that it lacks. */
export function codesFree(text: string): string {
  return [...PRINTED].filter((sign) => !text.includes(sign) && !KEPT.includes(sign)).join("");
}

/** Texts in which a code stands for a pair of characters, of which each may be a code again. */
export interface PairCoded {
  readonly texts: readonly string[];
  /** The pair of each code, one after another. */
  readonly pairs: string;
  readonly codes: string;
}

/**
 * Texts made shorter: again and again the commonest pair of neighbours becomes one character. What
 * undoes it is `spellOut`.
 *
 * Method: byte pair encoding, P. Gage, "A New Algorithm for Data Compression", The C Users Journal
 *   12(2), 1994.
 *
 * @throws Error when a text holds a character that is a code
 */
export function pairCoded(texts: readonly string[], codes: string = CODES): PairCoded {
  const taken = [...codes].filter((code) => texts.some((text) => text.includes(code)));
  if (taken.length > 0) throw new Error(`words may not hold ${taken.join(" ")}`);
  let short = [...texts];
  let pairs = "";
  for (const code of codes) {
    const pair = commonestPair(short);
    short = short.map((text) => text.replaceAll(pair, code));
    pairs += pair;
  }
  return { texts: short, pairs, codes };
}

function commonestPair(texts: readonly string[]): string {
  const times = new Map<string, number>();
  for (const text of texts) {
    for (let at = 1; at < text.length; at += 1) {
      const pair = text.slice(at - 1, at + 1);
      times.set(pair, (times.get(pair) ?? 0) + 1);
    }
  }
  return [...times].reduce((best, one) => (one[1] > best[1] ? one : best))[0];
}
