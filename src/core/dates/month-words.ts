import { lazily } from "../lazily";
import { everyLanguage, everyWord, wordSet } from "../words";

const monthOf = lazily<ReadonlyMap<string, number>>(
  () =>
    new Map(
      everyLanguage().flatMap((words) =>
        words.months.flatMap((names, index) => names.map((name) => [name, index + 1] as const)),
      ),
    ),
);

const FILLERS = wordSet((words) => [...words.dateFillers, ...words.weekdays]);

/** Which third of a month a word speaks of: 0 the first, 1 the middle, 2 the last. */
const thirdOf = lazily<ReadonlyMap<string, 0 | 1 | 2>>(
  () =>
    new Map([
      ...everyWord((words) => words.early).map((word) => [word, 0] as const),
      ...everyWord((words) => words.middle).map((word) => [word, 1] as const),
      ...everyWord((words) => words.late).map((word) => [word, 2] as const),
    ]),
);

const WEEK_WORDS = wordSet((words) => words.week);

/** 1 to 12, or null; the word in its normal form. */
export function monthOfWord(word: string): number | null {
  return monthOf().get(word) ?? null;
}

export function thirdOfWord(word: string): 0 | 1 | 2 | null {
  return thirdOf().get(word) ?? null;
}

export function isWeekWord(word: string): boolean {
  return WEEK_WORDS.has(word);
}

/** Weekday names and small words that a date may hold without their changing it. */
export function isDateFiller(word: string): boolean {
  return FILLERS.has(word);
}
