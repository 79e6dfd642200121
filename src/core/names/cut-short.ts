import { madeOnce } from "../made-once";
import { normalText } from "../words";

type Pair = readonly [one: string, other: string];

/** More names than these that are longer by one word are a way of naming: Bay, Bay 1, Bay 2, Bay 3 (our choice). */
const MOST_LONGER = 2;
/** "and", "da": a word between two others that people leave out (our choice). */
const LETTERS_OF_LITTLE = 3;
/** Longer names are no names. */
const MOST_WORDS = 6;
/** More names that begin alike are not compared with one another. */
const MOST_COMPARED = 12;
/** The beginning of a word without a point behind it is the word cut short from so many letters on (our choice). */
const LETTERS_CUT_SHORT = 4;

/**
 * Pairs of names of which one may be half of the other ("Ella", "Sweet Ella"), or the other without a
 * little word ("Pell & Sons", "Pell and Sons") or with a word cut short ("Pl. 10", "Planche 10"; "Bay 2 N",
 * "Bay 2 north").
 *
 * @param names each once
 */
export function cutShort(names: readonly string[]): readonly Pair[] {
  const wordsOf = new Map(names.map((name) => [name, wordsIn(name)]));
  return [...leftOut(wordsOf), ...shortWords(wordsOf)];
}

function wordsIn(name: string): readonly string[] {
  const apart = name.replace(/(?<=\p{L})(?=\p{N})|(?<=\p{N})(?=\p{L})/gu, " ");
  const words = normalText(apart).split(" ");
  return words.length > MOST_WORDS ? [] : words;
}

function leftOut(wordsOf: ReadonlyMap<string, readonly string[]>): readonly Pair[] {
  const ofWords = new Map<string, string>();
  for (const [name, words] of wordsOf) ofWords.set(words.join(" "), name);
  const longerOf = new Map<string, Set<string>>();
  for (const [name, words] of wordsOf) {
    words.forEach((word, at) => {
      const rest = words.filter((_, index) => index !== at);
      const isLittle = word.length <= LETTERS_OF_LITTLE && at > 0 && at < words.length - 1;
      if (
        rest.length === 0 ||
        (rest.length > 1 && !isLittle) ||
        (isNumber(word) && rest.some(isNumber))
      )
        return;
      const short = ofWords.get(rest.join(" "));
      if (short !== undefined) madeOnce(longerOf, short, () => new Set()).add(name);
    });
  }
  return [...longerOf].flatMap(([short, longer]) =>
    longer.size > MOST_LONGER ? [] : [...longer].map((one): Pair => [short, one]),
  );
}

function isNumber(word: string): boolean {
  return /^\p{N}+$/u.test(word);
}

function shortWords(wordsOf: ReadonlyMap<string, readonly string[]>): readonly Pair[] {
  /** Names that are alike but for one word of the same first letter, and which word that is. */
  const alike = new Map<string, { readonly name: string; readonly word: string }[]>();
  for (const [name, words] of wordsOf) {
    words.forEach((word, at) => {
      if (word === "" || isNumber(word)) return;
      const first = [...word][0] as string;
      const form = words.map((one, index) => (index === at ? `${first}*` : one)).join(" ");
      madeOnce(alike, form, () => []).push({ name, word });
    });
  }
  return [...alike].flatMap(([form, ones]) => {
    if (ones.length > MOST_COMPARED) return [];
    const isAlone = !form.includes(" ");
    return ones.flatMap((one, at) =>
      ones
        .slice(at + 1)
        .filter((other) => isShortFor(one, other, isAlone) || isShortFor(other, one, isAlone))
        .map((other): Pair => [one.name, other.name]),
    );
  });
}

/** @param isAlone the word is the whole name: then only a point tells that it is cut short */
function isShortFor(
  { name, word }: { readonly name: string; readonly word: string },
  { word: whole }: { readonly word: string },
  isAlone: boolean,
): boolean {
  if (word.length >= whole.length) return false;
  const isPointed = new RegExp(`(?<!\\p{L})${word}\\.`, "iu").test(name.normalize("NFKC"));
  const isBeginning = whole.startsWith(word);
  if (isPointed) return isBeginning || word.slice(-1) === whole.slice(-1);
  if (isAlone) return false;
  if (isBeginning) return word.length === 1 || word.length >= LETTERS_CUT_SHORT;
  // "Sr" for "Sister": the first letter and the last.
  return word.length === 2 && word.slice(-1) === whole.slice(-1);
}
