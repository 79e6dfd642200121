/** Words for how many of 100 at least, the surest first. */
const WORDS: readonly (readonly [least: number, word: string])[] = [
  [95, "almost sure"],
  [80, "likely"],
  [60, "rather likely"],
  [40, "even chance"],
  [20, "rather unlikely"],
  [5, "unlikely"],
  [0, "hardly"],
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
  const word = WORDS.find(([least]) => of100 >= least)?.[1] ?? "hardly";
  if (of100 <= 0) return `${word}: under 1 of 100`;
  return of100 >= 100 ? `${word}: over 99 of 100` : `${word}: ${of100} of 100`;
}

/**
 * A chance that was asked for, as a person would say it.
 *
 * @param share strictly between 0 and 1
 * @example ofTen(0.95) // "9.5 of 10"
 */
export function ofTen(share: number): string {
  const tenths = Number((10 * share).toPrecision(3));
  return tenths >= 10 ? "over 9.9 of 10" : `${tenths} of 10`;
}
