import { lazily } from "../lazily";
import { madeOnce } from "../made-once";
import { foldName, slipsBetween } from "../names";
import { everyLanguage, normalText, soundOf, type WayName, withoutAccents } from "../words";

/** What a text says of how a batch is raised, or a method's name of itself. */
export interface MethodWords {
  /** Crops of the files of words, and others by their folded names. */
  readonly crops: readonly string[];
  readonly ways: readonly WayName[];
  /** A bud is set, whichever way. */
  readonly isBudding: boolean;
  /** It stands at the top, by a word that says no more: "top graft". */
  readonly isAtTop: boolean;
  /** A graft is made, by a word that does not say which: "sambung", "enxerto". */
  readonly isGrafting: boolean;
  /** Words that no language knows. */
  readonly others: readonly string[];
}

type Meaning =
  | { readonly kind: "crop"; readonly crop: string }
  | { readonly kind: "way"; readonly way: WayName }
  | { readonly kind: "budding" | "atTop" }
  | { readonly kind: "filler" };

const MOST_WORDS = 5;

const meanings = lazily(() => {
  const found = new Map<string, Meaning>();
  const add = (words: readonly string[], meaning: Meaning) => {
    for (const word of words) found.set(word, meaning);
  };
  for (const { graftFillers, budding, atTop, crops, ways } of everyLanguage()) {
    add(graftFillers, { kind: "filler" });
    add(budding, { kind: "budding" });
    add(atTop, { kind: "atTop" });
    for (const [crop, words] of Object.entries(crops)) add(words, { kind: "crop", crop });
    for (const [way, words] of Object.entries(ways)) {
      add(words, { kind: "way", way: way as WayName });
    }
  }
  return found;
});

/** Ways that say no more beside another. A "side cleft" is none: it may be either, where no language has a phrase of it. */
const NO_MORE_BESIDE: Readonly<Partial<Record<WayName, readonly WayName[]>>> = {
  cleft: ["wedge", "veneer", "approach", "softwood", "stone", "hypocotyl"],
  side: ["veneer"],
  patch: ["green", "chip", "veneer"],
  shield: ["green", "patch", "chip"],
  seedling: ["stone", "hypocotyl"],
};

/** A word cut short has so many letters at least, and one that is lengthened or heard (our choice). */
const SHORTEST_CUT = 3;
const SHORTEST_STEM = 6;
const SHORTEST_SOUND = 5;
const SHORTEST_SLIP = 6;

const sorted = (word: string) => [...word].sort().join("");

/** Words that say a graft is made: those beside a way that headers know by it. */
const graftWords = lazily(
  () =>
    new Set(
      everyLanguage().flatMap(({ parts, steps: { grafting } }) => [
        ...parts.graft,
        ...(grafting?.name ?? []),
        ...(grafting?.count ?? []),
      ]),
    ),
);

const singleWords = lazily(() => [...meanings()].filter(([word]) => !word.includes(" ")));
const heardWords = lazily(
  () => new Map(singleWords().map(([word, meaning]) => [soundOf(word), meaning])),
);

/**
 * What a word may mean that no language knows as it is written: cut short with a point ("term."),
 * lengthened ("hypocotylaire"), or spelt by ear ("garfajem"). None where it may be two things.
 */
function almost(word: string, isCut: boolean): Meaning | undefined {
  if (word.length < SHORTEST_CUT || /\d/.test(word)) return undefined;
  const same = heardWords().get(soundOf(word));
  if (same !== undefined && word.length >= SHORTEST_SOUND) return same;
  const isSlip = (known: string) =>
    Math.min(word.length, known.length) >= SHORTEST_SLIP &&
    (sorted(known) === sorted(word) ||
      (Math.abs(known.length - word.length) < 2 && slipsBetween(known, word) < 2));
  const near = singleWords().filter(
    ([known]) =>
      (isCut && known.startsWith(word)) ||
      (known.length >= SHORTEST_STEM && word.startsWith(known)) ||
      isSlip(known),
  );
  const [first, ...more] = near.map(([, meaning]) => meaning);
  return more.every((one) => JSON.stringify(one) === JSON.stringify(first)) ? first : undefined;
}

/** "2" of "2 feuilles": how many of what says nothing more. */
function isNumberOf(words: readonly string[], at: number): boolean {
  return (
    /^\d+$/.test(words[at] as string) && meanings().get(words[at + 1] ?? "")?.kind === "filler"
  );
}

const almostKnown = new Map<string, Meaning | null>();

/** @param text the whole of it, in which a word that is cut short has a point behind it */
function meaningOf(word: string, text: string): Meaning | undefined {
  const isCut = withoutAccents(text).toLowerCase().includes(`${word}.`);
  const key = `${word}${isCut}`;
  return madeOnce(almostKnown, key, () => almost(word, isCut) ?? null) ?? undefined;
}

/**
 * Takes a text apart into crop and way, the longest phrase first.
 *
 * @param almostToo whether words that are cut short or spelt by ear count: in a cell under Method, not in names
 * @example methodWords("greffe en fente, cacao").others // []
 */
export function methodWords(text: string, almostToo = false): MethodWords {
  const words = normalText(text).split(" ").filter(Boolean);
  const crops = new Set<string>();
  const ways = new Set<WayName>();
  const others: string[] = [];
  let isBudding = false;
  let isAtTop = false;
  let isGrafting = false;
  for (let at = 0; at < words.length; ) {
    let end = Math.min(words.length, at + MOST_WORDS);
    const phrase = () => words.slice(at, end).join(" ");
    while (end > at + 1 && !meanings().has(phrase())) end -= 1;
    const one = words[at] as string;
    const meaning = meanings().get(phrase()) ?? (almostToo ? meaningOf(one, text) : undefined);
    if (meaning === undefined && !(almostToo && isNumberOf(words, at))) others.push(one);
    else if (meaning === undefined) end = at + 1;
    else if (meaning.kind === "crop") crops.add(meaning.crop);
    else if (meaning.kind === "way") ways.add(meaning.way);
    else if (meaning.kind === "budding") isBudding = true;
    else if (meaning.kind === "atTop") isAtTop = true;
    else if (graftWords().has(phrase())) isGrafting = true;
    at = end;
  }
  // "Cleft/side" are two.
  const isOne = !/[/+,&]/.test(text);
  const said = [...ways].filter(
    (way) => !isOne || !NO_MORE_BESIDE[way]?.some((other) => ways.has(other)),
  );
  return { crops: [...crops], ways: said, isBudding, isAtTop, isGrafting, others };
}

/** The crops that a cell under Crop names; one that no language knows by its folded name. */
export function cropsIn(text: string): readonly string[] {
  const { crops } = methodWords(text);
  return crops.length > 0 || text === "" ? crops : [foldName(text)];
}
