/** The word that asks a check for a part of its work: what CI repeats with every change. */
const TENTH = "--tenth";

/** Whether the words of a command ask for a tenth of a check. */
export function isTenth(words: readonly string[]): boolean {
  return words.includes(TENTH);
}

/** How many of the whole a check does: all of them, or the first tenth of the same seeds. */
export function partAsked(words: readonly string[], whole: number): number {
  return isTenth(words) ? Math.ceil(whole / 10) : whole;
}

/**
 * How far past a goal for a share a check may land before it is missed: not at all with the whole; with
 * a tenth by two standard errors, which is what chance alone does to so few.
 *
 * @param share the goal, 0 to 1
 * @param of    how many were looked at
 */
export function allowance(words: readonly string[], share: number, of: number): number {
  return isTenth(words) ? 2 * Math.sqrt((share * (1 - share)) / of) : 0;
}
