import { lazily } from "../lazily";
import { everyLanguage } from "./all-languages";
import { normalText } from "./normal-text";

/** The key of each word that a language has for a step, and of each name that was asked for since. */
const keyOfName = lazily(() => {
  const keys = new Map<string, string>();
  for (const { steps } of everyLanguage()) {
    for (const [key, step] of Object.entries(steps)) {
      keys.set(key, key);
      for (const words of [step.name, step.day, step.count]) {
        for (const word of words) keys.set(word, key);
      }
    }
  }
  return keys;
});

/** Longer ones are notes rather than names, and would only fill the memory. */
const LONGEST_KEPT = 40;

/**
 * The key under which a step is known whatever it is called: a nursery's "Wrap opened" and the
 * timetable's "First release" are one step. A name that no language knows is its own key.
 *
 * @example stepKey("Wrap opened") // "first release"
 */
export function stepKey(name: string): string {
  const known = keyOfName().get(name);
  if (known !== undefined) return known;
  const normal = normalText(name);
  const key = keyOfName().get(normal) ?? normal;
  if (name.length <= LONGEST_KEPT) keyOfName().set(name, key);
  return key;
}
