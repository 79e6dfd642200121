import type { CivilDay } from "../dates";
import type { Task } from "../due";
import { hoursOf } from "./hundredths";
import type { Overload } from "./overloads";

export type TimedTask = Task & { readonly hours: number };

/** An overload by its names: what is asked in which days, what is there, and the least that mends it. */
export interface Proof {
  /** Names, each once. */
  readonly tasks: readonly string[];
  readonly batches: readonly string[];
  /** Who can do any of the tasks; none when nobody can. */
  readonly persons: readonly string[];
  readonly from: CivilDay;
  readonly to: CivilDay;
  /** Hours; asked less there is short. */
  readonly asked: number;
  readonly there: number;
  readonly short: number;
}

/**
 * @param timed  the tasks by their indexes in the overload
 * @param names  the persons by theirs
 */
export function proofOf(
  { tasks, from, to, persons, asked, there, short }: Overload,
  timed: readonly TimedTask[],
  names: readonly string[],
): Proof {
  const inIt = tasks.map((at) => timed[at] as TimedTask);
  return {
    tasks: each(inIt.map(({ step }) => step.name)),
    batches: each(inIt.map(({ batch }) => batch)),
    persons: each(persons.map((at) => names[at] ?? "")),
    from,
    to,
    asked: hoursOf(asked),
    there: hoursOf(there),
    short: hoursOf(short),
  };
}

function each(names: readonly string[]): readonly string[] {
  return [...new Set(names)];
}
