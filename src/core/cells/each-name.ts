import { shortened } from "./quoted";

/** Names for a sentence: in order, each once and on one line. */
export function eachName(names: readonly string[]): readonly string[] {
  return [...new Set(names)].sort().map(shortened);
}
