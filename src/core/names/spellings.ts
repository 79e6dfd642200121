import { foldName } from "./fold-name";

/** How a name is spelt, with how often. */
export interface Spelling {
  readonly spelling: string;
  readonly times: number;
}

/**
 * The commonest spelling of each name, by its folded form; of two as common the first by letters, so
 * that the order of the rows tells nothing. Blank names are left out.
 */
export function commonestSpellings(names: Iterable<string>): ReadonlyMap<string, Spelling> {
  const times = new Map<string, number>();
  for (const name of names) times.set(name, (times.get(name) ?? 0) + 1);
  const ofName = new Map<string, Spelling & { readonly most: number }>();
  for (const [spelling, count] of times) {
    const key = foldName(spelling);
    if (key === "") continue;
    const before = ofName.get(key);
    const best =
      before === undefined ||
      count > before.most ||
      (count === before.most && spelling < before.spelling)
        ? { spelling, most: count }
        : before;
    ofName.set(key, { ...best, times: (before?.times ?? 0) + count });
  }
  return ofName;
}
