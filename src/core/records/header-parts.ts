import { lazily } from "../lazily";
import { madeOnce } from "../made-once";
import {
  everyLanguage,
  type HeaderPart,
  longestBeginning,
  normalText,
  soundOf,
  wordSet,
} from "../words";

/** A header taken apart into what its words say. */
export interface HeaderParts {
  readonly says: ReadonlySet<HeaderPart>;
  /** How many words there are, and how many of them say nothing known. */
  readonly words: number;
  readonly unknown: number;
  /** Whether it says days, plants, or neither. */
  readonly aspect: "day" | "count" | null;
  /** "Alive 1 mth" as 30 days; null where it says none. */
  readonly afterDays: number | null;
  /** "1st opening" 1, "2do conteo" 2; null where it says none. */
  readonly turn: number | null;
  /** Whether it opens or ends with a little word that wants a name: "de lote", "Púas de". */
  readonly opensWithOf: boolean;
  readonly endsWithOf: boolean;
  /** Whether it says not: "Non repris". */
  readonly isNot: boolean;
  /** Whether it names two things side by side: "Variety / stock". */
  readonly isTwo: boolean;
}

const DAY_WORDS = wordSet((words) => words.dayWords);
const COUNT_WORDS = wordSet((words) => words.countWords);
const FILLERS = wordSet((words) => words.headerFillers);
const VERBS = wordSet((words) => words.headerVerbs);
const NOT = wordSet((words) => [...words.workDays.except, ...words.no]);
/** "Sambung hipokotil", "Enxertia verde": which way is meant says nothing more of a column. */
const WAYS = wordSet((words) => Object.values(words.ways).flat());

const partsOfWord = lazily(() => {
  const parts = new Map<string, Set<HeaderPart>>();
  for (const words of everyLanguage()) {
    for (const [part, list] of Object.entries(words.parts)) {
      for (const word of list) madeOnce(parts, word, () => new Set()).add(part as HeaderPart);
    }
  }
  return parts;
});

const SHORTEST_BEGINNING = 4;
/** Of a word that is only heard: a shorter beginning is heard in too many. */
const SHORTEST_SOUND = 4;

/** The beginnings once more as they are heard, for those who write as they hear: "enchertia", "debourement". */
const partsOfSound = lazily(() => {
  const heard = new Map<string, Set<HeaderPart>>();
  for (const [word, parts] of partsOfWord()) {
    const sound = soundOf(word);
    if (sound.length < SHORTEST_SOUND || word.length < SHORTEST_BEGINNING) continue;
    const known = madeOnce(heard, sound, () => new Set());
    for (const part of parts) known.add(part);
  }
  return heard;
});
const NOTHING: ReadonlySet<HeaderPart> = new Set();

/** What a word says: by itself, else by the longest beginning of it that is known. */
function partsOf(word: string): ReadonlySet<HeaderPart> {
  return (
    partsOfWord().get(word) ?? longestBeginning(partsOfWord(), word, SHORTEST_BEGINNING) ?? NOTHING
  );
}

/** What a word says that is known by ear alone: less sure, since "other" sounds like another language's "ôter". */
function partsHeard(word: string): ReadonlySet<HeaderPart> {
  return longestBeginning(partsOfSound(), soundOf(word), SHORTEST_BEGINNING) ?? NOTHING;
}

/** "3", "1st", "2do", "30d": a number, and what stands behind it without a gap. */
const NUMBER = /^(\d+)(\p{L}*)$/u;
const TWO = /\p{L}{3}\s*[/+&]\s*\p{L}{3}/u;
/** "J30", "d60": the unit first. */
const UNIT_FIRST = /^(\p{L}+)(\d+)$/u;
/** Turns are few, days many: "30 d" is no thirtieth count. */
const MOST_TURNS = 4;
const DAYS_IN = { dayUnit: 1, weekUnit: 7, monthUnit: 30 } as const;

export function headerParts(header: string): HeaderParts {
  const words = phrases(normalText(header).split(" ")).map(unitLast);
  const says = new Set<HeaderPart>(/[%$€£]/.test(header) ? ["measure"] : []);
  let unknown = 0;
  let day = false;
  let count = false;
  let afterDays: number | null = null;
  let turn: number | null = null;
  let number: number | null = null;
  for (const word of words) {
    const digits = NUMBER.exec(word);
    const unit = digits === null ? word : (digits[2] as string);
    if (digits !== null) number = Number(digits[1]);
    const parts = partsOf(unit);
    const after = number === null ? undefined : unitIn(parts);
    if (after !== undefined && number !== null) {
      afterDays = number * DAYS_IN[after];
      number = null;
      turn = null;
      continue;
    }
    if (digits !== null) {
      if (number !== null && number <= MOST_TURNS) turn = number;
      continue;
    }
    number = null;
    const dayWord = DAY_WORDS.has(word);
    const countWord = COUNT_WORDS.has(word);
    day ||= dayWord;
    count ||= countWord;
    for (const part of parts.size > 0 ? parts : partsHeard(unit)) says.add(part);
    const isAside = dayWord || countWord || FILLERS.has(word) || VERBS.has(word);
    const known = parts.size > 0 || isAside || WAYS.has(word);
    if (!known) unknown += 1;
  }
  if (says.has("first")) turn ??= 1;
  if (says.has("later")) turn = 2;
  return {
    says,
    words: words.length,
    unknown,
    aspect: day === count ? null : day ? "day" : "count",
    afterDays,
    turn,
    opensWithOf: words.length > 1 && FILLERS.has(words[0] as string),
    endsWithOf: words.length > 1 && FILLERS.has(words[words.length - 1] as string),
    isNot: words.some(
      (word) => NOT.has(word) && !COUNT_WORDS.has(word) && partsOf(word).size === 0,
    ),
    isTwo: TWO.test(header),
  };
}

/** Two words that say together what neither says, as one: "headed back". */
function phrases(words: readonly string[]): readonly string[] {
  const joined: string[] = [];
  for (let at = 0; at < words.length; at += 1) {
    const two = `${words[at]} ${words[at + 1]}`;
    const isPhrase = partsOfWord().has(two);
    joined.push(isPhrase ? two : (words[at] as string));
    if (isPhrase) at += 1;
  }
  return joined;
}

function unitLast(word: string): string {
  const [, unit = "", number] = UNIT_FIRST.exec(word) ?? [];
  return number !== undefined && unitIn(partsOf(unit)) !== undefined ? `${number}${unit}` : word;
}

function unitIn(parts: ReadonlySet<HeaderPart>): keyof typeof DAYS_IN | undefined {
  return (Object.keys(DAYS_IN) as (keyof typeof DAYS_IN)[]).find((unit) => parts.has(unit));
}
