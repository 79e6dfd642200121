import * as text from "../../sentences/made/orders-page";

/** Words for how many of 100 at least, the surest first. */
const WORDS: readonly (readonly [least: number, word: () => string])[] = [
  [95, text.almostSure],
  [80, text.likely],
  [60, text.ratherLikely],
  [40, text.evenChance],
  [20, text.ratherUnlikely],
  [5, text.unlikely],
  [0, text.hardly],
];

/**
 * A chance in a word and a number. It was found by trying out, so that none and all of 100 are never
 * said: those that are sure are told in other words.
 *
 * @param chance 0 to 1
 * @example chanceWords(0.86) // "likely: 86 of 100"
 */
export function chanceWords(chance: number): string {
  const of100 = Math.round(100 * chance);
  const word = (WORDS.find(([least]) => of100 >= least)?.[1] ?? text.hardly)();
  if (of100 <= 0) return text.under1({ word });
  return of100 >= 100 ? text.over99({ word }) : text.of100({ word, chance: of100 });
}

/**
 * A chance that was asked for, as a person would say it.
 *
 * @param share strictly between 0 and 1
 * @example ofTen(0.95) // "9.5 of 10"
 */
export function ofTen(share: number): string {
  const tenths = Number((10 * share).toPrecision(3));
  return text.ofTen({ tenths: tenths >= 10 ? text.over99Tenths() : String(tenths) });
}
