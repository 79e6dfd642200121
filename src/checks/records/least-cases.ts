import type { CleanTable } from "./clean-sheet";
import { type Combination, combination } from "./combination";
import type { Difference } from "./differences";
import { differencesOf, troublesOf } from "./habit-check";
import { smallest } from "./shrink";

/** The smallest sheet in which something is read otherwise without a word, and what. */
export interface SilentCase {
  readonly least: Combination;
  readonly difference: Difference;
}

/** @param seed of a combination with a silent difference */
export function leastSilent(seed: number, table: CleanTable): SilentCase {
  const found = (one: Combination) =>
    differencesOf(one, table).find(({ listedAs }) => listedAs === null);
  const least = smallest(combination(seed), (one) => found(one) !== undefined);
  return { least, difference: found(least) as Difference };
}

/** @param seed of a combination with a difference that the trouble tells */
export function leastTold(seed: number, trouble: string, table: CleanTable): Combination {
  return smallest(combination(seed), (one) => troublesOf(differencesOf(one, table)).has(trouble));
}

const SHEETS_ALONE = 20;

/** Share of the sheets with one habit and no other that are read as the clean ones, 0 to 1. */
export function identicalAlone(habit: string, table: CleanTable): number {
  let identical = 0;
  for (let seed = 0; seed < SHEETS_ALONE; seed += 1) {
    const alone = { ...combination(seed), habits: [habit] };
    if (differencesOf(alone, table).length === 0) identical += 1;
  }
  return identical / SHEETS_ALONE;
}
