import { foldName, LONGEST_NAME } from "./fold-name";

/** More names are no help (our choice). */
const MOST_NAMES = 3;
/** One slip in so many letters still looks like the name that was meant (our choice). */
const LETTERS_A_SLIP = 3;

/**
 * The names that a written one may have meant, the nearest first, three at most. They are offered, never
 * taken for it.
 */
export function nearestNames(written: string, names: readonly string[]): readonly string[] {
  if (written.length > LONGEST_NAME) return [];
  const key = foldName(written);
  const most = Math.ceil(key.length / LETTERS_A_SLIP);
  return names
    .filter(({ length }) => length <= LONGEST_NAME)
    .map((name) => ({ name, slips: slipsBetween(key, foldName(name)) }))
    .filter(({ slips }) => slips <= most)
    .sort((a, b) => a.slips - b.slips)
    .slice(0, MOST_NAMES)
    .map(({ name }) => name);
}

/**
 * The fewest letters to put in, take out or change that make one text of another.
 *
 * Source: Levenshtein, V. I. (1966), Soviet Physics Doklady 10, 707-710.
 */
export function slipsBetween(one: string, other: string): number {
  let row = Array.from({ length: other.length + 1 }, (_, at) => at);
  [...one].forEach((letter, above) => {
    const next = [above + 1];
    for (let at = 0; at < other.length; at += 1) {
      const changed = (row[at] as number) + (letter === other[at] ? 0 : 1);
      next.push(Math.min(changed, (row[at + 1] as number) + 1, (next[at] as number) + 1));
    }
    row = next;
  });
  return row[other.length] as number;
}
