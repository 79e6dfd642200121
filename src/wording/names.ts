import * as text from "../sentences/made/names";

/** Names for a sentence: of many the first, and how many more. @example fewNames(["B1", "B2", "B3", "B4", "B5"], 2) // ["B1", "B2", "3 more"] */
export function fewNames(names: readonly string[], most: number): readonly string[] {
  const more = names.length - most;
  return [...names.slice(0, most), ...(more > 0 ? [text.more({ names: more })] : [])];
}
