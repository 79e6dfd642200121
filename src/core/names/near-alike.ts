import { cutShort } from "./cut-short";
import { foldName } from "./fold-name";

/** A letter that passes for a digit, by eye or on a scanner. */
const LOOKS_LIKE: Readonly<Record<string, string>> = {
  o: "0",
  i: "1",
  l: "1",
  z: "2",
  s: "5",
  b: "8",
};
/** Words that are shorter have neighbours that mean another thing: north, south; bed A, bed B (our choice). */
const LETTERS_FOR_A_SLIP = 5;
/** More names than these that differ in one place are a way of naming, no slips (our choice). */
const MOST_ALIKE = 3;

/**
 * Pairs of names that may be one: a slip of a letter in a longer word, two letters swapped, a letter
 * for a digit, a nought in front, a gap within a word, the words turned round, a word left out or cut
 * short. Other digits never.
 *
 * Method: names that share a form with something taken out are a pair, so that the work grows with
 * the number of names alone.
 *
 * @param names each once, none folding like another
 */
export function nearAlike(names: readonly string[]): readonly (readonly [string, string])[] {
  const ofForm = new Map<string, Set<string>>();
  for (const name of names) {
    for (const form of formsOf(foldName(name))) {
      const alike = ofForm.get(form);
      if (alike === undefined) ofForm.set(form, new Set([name]));
      else alike.add(name);
    }
  }
  const pairs = new Map<string, readonly [string, string]>();
  for (const set of ofForm.values()) {
    if (set.size > MOST_ALIKE) continue;
    const alike = [...set].sort();
    alike.forEach((one, at) => {
      for (const other of alike.slice(at + 1)) pairs.set(`${one}\n${other}`, [one, other]);
    });
  }
  for (const pair of cutShort(names)) {
    const [one, other] = [...pair].sort() as [string, string];
    pairs.set(`${one}\n${other}`, [one, other]);
  }
  return [...pairs.keys()].sort().map((key) => pairs.get(key) as readonly [string, string]);
}

function formsOf(key: string): ReadonlySet<string> {
  const words = key.split(" ");
  const forms = new Set([
    `digits ${key.replace(/[oilzsb]/g, (letter) => LOOKS_LIKE[letter] as string)}`,
    `noughts ${key.replace(/(?<!\p{N})0+(?=\p{N})/gu, "")}`,
    `gaps ${key.replace(/(?<=\p{L}) (?=\p{L})/gu, "")}`,
    ...(words.every((word) => /\p{L}/u.test(word)) ? [`order ${words.sort().join(" ")}`] : []),
    `slip ${key}`,
  ]);
  for (const { 0: word, index } of key.matchAll(/\p{L}{4,}/gu)) {
    const end = index + word.length;
    if (word.length < LETTERS_FOR_A_SLIP) {
      forms.add(`swap ${key.slice(0, index)}${[...word].sort().join("")}${key.slice(end)}`);
      continue;
    }
    for (let at = index; at < end; at += 1)
      forms.add(`slip ${key.slice(0, at)}${key.slice(at + 1)}`);
  }
  return forms;
}
