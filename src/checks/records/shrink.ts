import type { Combination } from "./combination";

/**
 * The smallest combination that still shows a fault: habits are left out one by one, then batches.
 *
 * @param shows whether a combination shows the fault; true for the one given
 */
export function smallest(
  start: Combination,
  shows: (combination: Combination) => boolean,
): Combination {
  let least = start;
  for (const habit of start.habits) {
    const without = { ...least, habits: least.habits.filter((one) => one !== habit) };
    if (shows(without)) least = without;
  }
  for (const batches of [2, 3, 4, 6, 9, 13]) {
    const fewer = { ...least, batches };
    if (batches < least.batches && shows(fewer)) return fewer;
  }
  return least;
}
