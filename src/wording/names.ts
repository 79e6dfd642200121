import * as text from "../sentences/made/names";

/** Names for a sentence: of many the first, and how many more. @example fewNames(["B1", "B2", "B3", "B4", "B5"], 2) // ["B1", "B2", "3 more"] */
export function fewNames(names: readonly string[], most: number): readonly string[] {
  const more = names.length - most;
  return [...names.slice(0, most), ...(more > 0 ? [text.more({ names: more })] : [])];
}

interface Variety {
  readonly variety: string;
  /** Names that may be meant; none where nothing is near. */
  readonly nearest: readonly string[];
}

/** What is said of a variety that no batch has: alone, or with what may be meant. */
export function unlessNear(
  alone: (facts: Pick<Variety, "variety">) => string,
  near: (facts: Variety) => string,
): (facts: Variety) => string {
  return ({ variety, nearest }) =>
    nearest.length === 0 ? alone({ variety }) : near({ variety, nearest });
}
