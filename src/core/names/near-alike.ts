import { madeOnce } from "../made-once";
import { normalText, soundOf } from "../words";
import { cutShort } from "./cut-short";
import { foldName, LONGEST_NAME } from "./fold-name";

/** A letter that passes for a digit, by eye or on a scanner. */
const LOOKS_LIKE: Readonly<Record<string, string>> = {
  o: "0",
  i: "1",
  l: "1",
  z: "2",
  s: "5",
  b: "8",
};
const LOOKS_LIKE_LETTER: Readonly<Record<string, string>> = { 0: "o", 1: "i", 5: "s", 8: "b" };
/** Of a name of one word: shorter ones have neighbours that mean another thing (our choice). */
const LETTERS_FOR_A_SLIP = 5;
/** Of a word beside others, which are alike: bed A, bed B; east, west are two (our choice). */
const LETTERS_FOR_A_SLIP_BESIDE = 4;
const LETTERS_FOR_A_SWAP = 4;
const LETTERS_FOR_A_SWAP_BESIDE = 2;
const LETTERS_WITHOUT_VOWELS = 3;
/** Of a word beside others, which are alike (our choice). */
const LETTERS_OF_A_STEM = 3;
const LETTERS_BEHIND_A_STEM = 2;
/** Of a long word, of which up to half may be another ending (our choice). */
const LETTERS_OF_A_LONG_STEM = 4;

const ROMAN: readonly string[] = ["i", "ii", "iii", "iv", "v", "vi", "vii", "viii", "ix", "x"];
/** Figures, and those that a gap parts from one another. */
const FIGURES = /\p{N}+(?: \p{N}+)*/gu;

/** More names than these that differ in one place are a way of naming, no slips (our choice). */
const MOST_ALIKE = 3;

/**
 * Pairs of names that may be one: a slip of a letter in a longer word, two letters swapped, a letter
 * or a Roman number for digits, a nought in front, a gap within a word, a stroke for a hyphen, a question mark, other vowels,
 * the words turned round, a word left out or cut short. Other digits never.
 *
 * Method: names that share a form with something taken out are a pair, so that the work grows with
 * the number of names alone.
 *
 * @param texts each once, none folding like another
 */
export function nearAlike(texts: readonly string[]): readonly Pair[] {
  const names = texts.filter(({ length }) => length <= LONGEST_NAME);
  const ofForm = new Map<string, Set<string>>();
  for (const name of names) {
    for (const form of formsOf(name)) madeOnce(ofForm, form, () => new Set()).add(name);
  }
  const pairs = new Map<string, Pair>();
  const add = (pair: Pair) => {
    const [one, other] = [...pair].sort() as [string, string];
    pairs.set(`${one}\n${other}`, [one, other]);
  };
  for (const pair of pairsIn(ofForm)) add(pair);
  for (const pair of otherFigures(names)) add(pair);
  for (const pair of cutShort(names)) add(pair);
  return [...pairs.keys()].sort().map((key) => pairs.get(key) as Pair);
}

type Pair = readonly [string, string];

function pairsIn(ofForm: ReadonlyMap<string, ReadonlySet<string>>): readonly Pair[] {
  return [...ofForm.values()].flatMap((set) => {
    if (set.size > MOST_ALIKE) return [];
    const alike = [...set];
    return alike.flatMap((one, at) => alike.slice(at + 1).map((other): Pair => [one, other]));
  });
}

/**
 * "AKO 21" for "AKO 12", "AKO 1-2" for "AKO 12": figures turned round or a stroke too many, where few names
 * are built so. Where many are, as of beds, each figure is one of a row.
 */
function otherFigures(names: readonly string[]): readonly Pair[] {
  const ofStem = new Map<string, string[]>();
  for (const name of names) {
    const key = foldName(name);
    if (!/\p{N}/u.test(key) || !/\p{L}/u.test(key)) continue;
    madeOnce(ofStem, key.replace(FIGURES, "#"), () => []).push(name);
  }
  return [...ofStem.values()].flatMap((built) => {
    if (built.length < 2 || built.length > MOST_ALIKE) return [];
    const forms = new Map<string, Set<string>>();
    for (const name of built) {
      const key = foldName(name);
      const put = (form: string) => madeOnce(forms, form, () => new Set()).add(name);
      put(key.replace(FIGURES, (text) => text.replace(/ /g, "")));
      if (!/\p{N} \p{N}/u.test(key)) {
        put(`turned ${key.replace(FIGURES, (text) => [...text].sort().join(""))}`);
      }
    }
    return pairsIn(forms);
  });
}

function formsOf(name: string): ReadonlySet<string> {
  const key = foldName(name);
  const words = key.split(" ");
  const forms = new Set([
    `digits ${key.replace(/[oilzsb]/g, (letter) => LOOKS_LIKE[letter] as string)}`,
    `digits ${inFigures(name)}`,
    `letters ${foldName(inLetters(name))}`,
    `noughts ${withoutNoughts(key)}`,
    `gaps ${key.replace(/(?<=\p{L}) (?=\p{L})/gu, "")}`,
    `digits ${withoutNoughts(inFigures(name))}`,
    `strokes ${key.replace(/(?<=\p{N})stroke(?=\p{N})/gu, " ").replace(/ ?doubt$/, "")}`,
    ...(words.every((word) => /\p{L}/u.test(word)) ? [`order ${[...words].sort().join(" ")}`] : []),
    `slip ${key}`,
  ]);
  if (!/^\p{L}*$/u.test(key)) forms.add(`vowels ${withoutVowels(key)}`);
  if (words.length > 1) forms.add(`plurals ${key.replace(/(?<=\p{L}{2})s(?!\p{L})/gu, "")}`);
  forms.add(`heard ${key.replace(/\p{L}{5,}/gu, soundOf)}`);
  // "Mirallo" for "Mirayo", as it is heard in Spanish.
  forms.add(`heard ${key.replace(/ll(?=\p{L})/gu, "y").replace(/\p{L}{5,}/gu, soundOf)}`);
  for (const { 0: word, index } of key.matchAll(/\p{L}{2,}/gu)) {
    const end = index + word.length;
    const isBeside = word.length < key.length;
    // "Doux" and "douce", "Serrana" and "Serrinha": what stands behind the stem.
    const behind = Math.max(LETTERS_BEHIND_A_STEM, Math.floor(word.length / 2));
    for (let cut = 1; isBeside && cut <= behind; cut += 1) {
      if (
        word.length - cut <
        (cut > LETTERS_BEHIND_A_STEM ? LETTERS_OF_A_LONG_STEM : LETTERS_OF_A_STEM)
      )
        break;
      forms.add(`stem ${key.slice(0, end - cut)}* ${key.slice(end)}`);
    }
    const [slip, swap] = isBeside
      ? [LETTERS_FOR_A_SLIP_BESIDE, LETTERS_FOR_A_SWAP_BESIDE]
      : [LETTERS_FOR_A_SLIP, LETTERS_FOR_A_SWAP];
    // A slip covers two letters that are swapped, too, but not those at the ends of a short word.
    if (word.length >= swap && word.length <= LETTERS_FOR_A_SWAP) {
      forms.add(`swap ${key.slice(0, index)}${[...word].sort().join("")}${key.slice(end)}`);
    }
    // "East" and "west" are two, though each is "est" with a letter more.
    const gap = word.length < LETTERS_FOR_A_SLIP ? "*" : "";
    for (let at = index; at < end && word.length >= slip; at += 1)
      forms.add(`slip ${key.slice(0, at)}${gap}${key.slice(at + 1)}`);
  }
  return forms;
}

function withoutNoughts(key: string): string {
  return key.replace(/(?<!\p{N})0+(?=\p{N})/gu, "");
}

/** "Tambo S" as "tambo5", "Naungan III" as "naungan3": what stands apart may be a number. */
function inFigures(name: string): string {
  const words = normalText(name)
    .replace(/(?<=\p{L}{2})(?=\p{N})/gu, " ")
    .split(" ");
  const figures = words.map((word, at) => {
    const roman = at > 0 ? ROMAN.indexOf(word) + 1 : 0;
    if (roman > 0 && word !== "i") return String(roman);
    if (!/^[\doilzsb]+$/.test(word)) return word;
    return [...word].map((letter) => LOOKS_LIKE[letter] ?? letter).join("");
  });
  return figures.join(" ").replace(/(?<=\p{L}) | (?=\p{L})/gu, "");
}

/** "AK0 12" as "AKO 12": a figure that ends a word of letters may be a letter. */
function inLetters(name: string): string {
  return normalText(name).replace(
    /(?<=(?<!\p{N})\p{L}{2})[0158](?= )/gu,
    (digit) => LOOKS_LIKE_LETTER[digit] as string,
  );
}

/** "pak rudi" as "pk rd", and so "pak rudy" and "pk rudi". */
function withoutVowels(key: string): string {
  return key.replace(/\p{L}+/gu, (word) =>
    word.length < LETTERS_WITHOUT_VOWELS
      ? word
      : `${word.slice(0, 1)}${word.slice(1).replace(/[aeiouy]/g, "")}`,
  );
}
