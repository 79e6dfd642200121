import { madeOnce } from "../made-once";
import { normalText, soundOf } from "../words";

type Pair = readonly [one: string, other: string];

/** More names than these that are longer by one word are a way of naming: Bay, Bay 1, Bay 2, Bay 3 (our choice). */
const MOST_LONGER = 2;
/** "and", "da": a word between two others that people leave out (our choice). */
const LETTERS_OF_LITTLE = 3;
/** "Zé" of "José", "Beto" of "Roberto" (our choice). */
const LETTERS_OF_A_SHORT_NAME = 4;
const LETTERS_OF_AN_END = 2;
/** "KT" for two words, "PPK" for three. */
const MOST_INITIALS = 3;
/** A name of one word may be another of at most so many times its letters: "Rugo", "Rugoso"; "Cleo", "Cleopatra" (our choice). */
const TIMES_AS_LONG = 3;
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
  for (const [name, words] of wordsOf) {
    ofWords.set(words.join(" "), name);
    // "J.P." for "JP".
    if (words.length > 1 && words.every((word) => /^\p{L}$/u.test(word))) {
      ofWords.set(words.join(""), name);
    }
  }
  const longerOf = new Map<string, Set<string>>();
  const add = (words: readonly string[], name: string) => {
    const short = ofWords.get(words.join(" "));
    if (short !== undefined && short !== name) madeOnce(longerOf, short, () => new Set()).add(name);
  };
  for (const [name, words] of wordsOf) {
    words.forEach((word, at) => {
      if (mayLack(words, at))
        add(
          words.filter((_, index) => index !== at),
          name,
        );
      // "Bu Lenggo" for "Ibu Lenggo".
      if (word.length === LETTERS_OF_LITTLE && words.length > 1 && !isNumber(word)) {
        add([...words.slice(0, at), word.slice(1), ...words.slice(at + 1)], name);
      }
      // "KT Sari" for "Kel. Tani Sari".
      for (let end = at + 2; end <= Math.min(at + MOST_INITIALS, words.length); end += 1) {
        const initials = words.slice(at, end).map((one) => one.slice(0, 1));
        // Of a whole name, too: "LP" for "Luis Perez".
        if (!initials.some(isNumber)) {
          add([...words.slice(0, at), initials.join(""), ...words.slice(end)], name);
        }
      }
    });
    // "Dorée" for "Dorée du Lac".
    const [first = "", little = "", ...more] = words;
    if (more.length === 1 && little.length <= LETTERS_OF_LITTLE && !words.some(isNumber)) {
      add([first], name);
    }
    // "Asantor" for "Kofi A. Asantor".
    const [last = "", ...before] = [...words].reverse();
    if (before.length === 2 && before[0]?.length === 1 && !words.some(isNumber)) add([last], name);
    // "Pell Growers" for "Pell Growers (Upper)".
    const bracket = /\([^()]*\)/;
    if (bracket.test(name)) add(wordsIn(name.replace(bracket, " ").trim()), name);
    // "T. Rathi" of "T. Rathi + Bhomu".
    const several = name.split(/[+&]/);
    if (several.length > 1) for (const one of several) add(wordsIn(one), name);
  }
  return [...longerOf].flatMap(([short, longer]) =>
    longer.size > MOST_LONGER ? [] : [...longer].map((one): Pair => [short, one]),
  );
}

/**
 * Whether a person leaves out such a word: half of two, a little word within, the first of more, what stands
 * behind a number. "Late" behind "Sweet Ella" names a selection of its own.
 */
function mayLack(words: readonly string[], at: number): boolean {
  const word = words[at] as string;
  const rest = words.filter((_, index) => index !== at);
  if (rest.length === 0 || (isNumber(word) && rest.some(isNumber))) return false;
  if (rest.length === 1) return true;
  if (at === 0) return !isNumber(word) && !rest.every(isNumber);
  if (at === words.length - 1) {
    // "Ltd" behind a firm is little, "Late" behind "Sweet Ella" is not.
    return isNumber(word) || isNumber(words[at - 1] as string) || isTitle(word);
  }
  return word.length <= LETTERS_OF_LITTLE;
}

function isNumber(word: string): boolean {
  return /^\p{N}+$/u.test(word);
}

function shortWords(wordsOf: ReadonlyMap<string, readonly string[]>): readonly Pair[] {
  /** Names that are alike but for one word of the same first letter, and which word that is. */
  const alike = new Map<string, { readonly name: string; readonly word: string }[]>();
  for (const [name, all] of wordsOf) {
    // "K. Asantor" for "Kofi A. Asantor".
    const words = all.filter((word, at) => !isInitialWithin(word, at, all));
    words.forEach((word, at) => {
      if (word === "" || isNumber(word)) return;
      const first = [...word][0] as string;
      const put = (sign: string) =>
        madeOnce(
          alike,
          words.map((one, index) => (index === at ? sign : one)).join(" "),
          () => [],
        ).push({ name, word });
      put(`${first}*`);
      // "Zé Preá" for "José Preá": a first name without its beginning.
      if (at === 0 && words.length > 1) put(`*${soundOf(word).slice(-LETTERS_OF_AN_END)}`);
      // "B. Tally" and "Mrs Tally".
      if (at === 0 && words.length > 1 && (word.length === 1 || isTitle(word))) put("*");
    });
  }
  return [...alike].flatMap(([form, ones]) => {
    if (ones.length > MOST_COMPARED) return [];
    const isAlone = !form.includes(" ");
    return ones.flatMap((one, at) =>
      ones
        .slice(at + 1)
        .filter((other) =>
          isEnds(form)
            ? isEndOf(one.word, other.word) || isEndOf(other.word, one.word)
            : isTitles(form)
              ? isTitle(one.word) !== isTitle(other.word)
              : isShortFor(one, other, isAlone) || isShortFor(other, one, isAlone),
        )
        .map((other): Pair => [one.name, other.name]),
    );
  });
}

function isInitialWithin(word: string, at: number, words: readonly string[]): boolean {
  return at > 0 && at < words.length - 1 && word.length === 1 && !words.some(isNumber);
}

/** A form in which the beginning of a first name is left open. */
function isEnds(form: string): boolean {
  return /^\*\S/.test(form);
}

/** Whether a short name is the end of a longer one, as it is heard. */
function isEndOf(word: string, whole: string): boolean {
  return (
    word.length <= LETTERS_OF_A_SHORT_NAME &&
    word.length < whole.length &&
    soundOf(whole).endsWith(soundOf(word))
  );
}

/** A form in which an initial or a title is left open. */
function isTitles(form: string): boolean {
  return form.startsWith("* ");
}

/** "Mrs", "Dr": a word cut short to its consonants. */
function isTitle(word: string): boolean {
  return word.length > 1 && word.length <= LETTERS_OF_LITTLE && !/[aeiouy\p{N}]/u.test(word);
}

/** @param isAlone the word is the whole name: then only a point tells that it is cut short */
function isShortFor(
  { name, word }: { readonly name: string; readonly word: string },
  { word: whole }: { readonly word: string },
  isAlone: boolean,
): boolean {
  if (word.length >= whole.length) return false;
  const plain = name.normalize("NFKD").replace(/\p{M}/gu, "");
  const isPointed = new RegExp(`(?<!\\p{L})${word}\\.`, "iu").test(plain);
  const isBeginning = whole.startsWith(word);
  if (isPointed) return isBeginning || word.slice(-1) === whole.slice(-1);
  if (isAlone) {
    const isHalf = word.length >= LETTERS_CUT_SHORT && whole.length <= TIMES_AS_LONG * word.length;
    return isBeginning && isHalf;
  }
  if (/^[ivx]+$/.test(whole)) return false;
  // "Pl 4" for "Planche 4": beside a number fewer letters tell.
  if (isBeginning)
    return word.length === 1 || word.length >= LETTERS_CUT_SHORT || /\p{N}/u.test(name);
  if (isInConsonants(word, whole)) return true;
  // "Sr" for "Sister", "Ste" for "Sainte": the first letter and the last.
  return word.length <= LETTERS_OF_LITTLE && word.length > 1 && word.slice(-1) === whole.slice(-1);
}

/** "Sdlg" for "seedling", "bdg" for "bedengan": the first letter and others in their order, none a vowel. */
function isInConsonants(word: string, whole: string): boolean {
  if (word.length < LETTERS_OF_LITTLE || /[aeiouy\p{N}]/u.test(word)) return false;
  if (word.slice(0, 1) !== whole.slice(0, 1)) return false;
  let at = 0;
  for (const letter of whole) if (letter === word[at]) at += 1;
  return at === word.length;
}
