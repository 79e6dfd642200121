import { lazily } from "../lazily";
import { foldName } from "../names";
import { everyLanguage, normalText, type WayName } from "../words";

/** What a text says of how a batch is raised, or a method's name of itself. */
export interface MethodWords {
  /** Crops of the files of words, and others by their folded names. */
  readonly crops: readonly string[];
  readonly ways: readonly WayName[];
  /** A bud is set, whichever way. */
  readonly isBudding: boolean;
  /** Words that no language knows. */
  readonly others: readonly string[];
}

type Meaning =
  | { readonly kind: "crop"; readonly crop: string }
  | { readonly kind: "way"; readonly way: WayName }
  | { readonly kind: "budding" }
  | { readonly kind: "filler" };

const MOST_WORDS = 5;

const meanings = lazily(() => {
  const found = new Map<string, Meaning>();
  const add = (words: readonly string[], meaning: Meaning) => {
    for (const word of words) found.set(word, meaning);
  };
  for (const { graftFillers, budding, crops, ways } of everyLanguage()) {
    add(graftFillers, { kind: "filler" });
    add(budding, { kind: "budding" });
    for (const [crop, words] of Object.entries(crops)) add(words, { kind: "crop", crop });
    for (const [way, words] of Object.entries(ways)) {
      add(words, { kind: "way", way: way as WayName });
    }
  }
  return found;
});

/**
 * Takes a text apart into crop and way, the longest phrase first.
 *
 * @example methodWords("greffe en fente, cacao").others // []
 */
export function methodWords(text: string): MethodWords {
  const words = normalText(text).split(" ").filter(Boolean);
  const crops = new Set<string>();
  const ways = new Set<WayName>();
  const others: string[] = [];
  let isBudding = false;
  for (let at = 0; at < words.length; ) {
    let end = Math.min(words.length, at + MOST_WORDS);
    const phrase = () => words.slice(at, end).join(" ");
    while (end > at + 1 && !meanings().has(phrase())) end -= 1;
    const meaning = meanings().get(phrase());
    if (meaning === undefined) others.push(words[at] as string);
    else if (meaning.kind === "crop") crops.add(meaning.crop);
    else if (meaning.kind === "way") ways.add(meaning.way);
    else if (meaning.kind === "budding") isBudding = true;
    at = end;
  }
  return { crops: [...crops], ways: [...ways], isBudding, others };
}

/** The crops that a cell under Crop names; one that no language knows by its folded name. */
export function cropsIn(text: string): readonly string[] {
  const { crops } = methodWords(text);
  return crops.length > 0 || text === "" ? crops : [foldName(text)];
}
