import { lazily } from "../lazily";
import { everyLanguage } from "./all-languages";
import { normalText } from "./normal-text";

const keyOfWord = lazily<ReadonlyMap<string, string>>(
  () =>
    new Map(
      everyLanguage().flatMap((words) =>
        Object.entries(words.steps).flatMap(([key, step]) =>
          [key, ...step.name, ...step.day, ...step.count].map((word) => [word, key] as const),
        ),
      ),
    ),
);

/**
 * The key under which a step is known whatever it is called: a nursery's "Wrap opened" and the
 * timetable's "First release" are one step. A name that no language knows is its own key.
 *
 * @example stepKey("Wrap opened") // "first release"
 */
export function stepKey(name: string): string {
  const normal = normalText(name);
  return keyOfWord().get(normal) ?? normal;
}
