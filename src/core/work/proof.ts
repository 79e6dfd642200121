import type { CivilDay } from "../dates/civil-day";
import { sentenceDay } from "../dates/day-text";
import type { Task } from "../due/due-tasks";
import { hoursOf } from "./hundredths";
import type { Overload } from "./overloads";

export type TimedTask = Task & { readonly hours: number };

/** An overload in words: what is asked in which days, what is there, and the least that mends it. */
export interface Proof {
  /** Names, each once, the first few. */
  readonly tasks: string;
  readonly batches: string;
  /** Who can do any of the tasks; empty when nobody can. */
  readonly persons: string;
  readonly from: CivilDay;
  readonly to: CivilDay;
  readonly sentence: string;
}

const MOST_NAMES = 4;

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
  const window = from === to ? sentenceDay(from) : `${sentenceDay(from)} to ${sentenceDay(to)}`;
  const who = persons.length === 0 ? "nobody can do them" : `${hoursOf(there)} hours are there`;
  const sum = `${hoursOf(asked)} hours are asked, ${who}`;
  const mend = `${hoursOf(short)} hours more in these days are the fewest that mend it`;
  return {
    tasks: list(inIt.map(({ step }) => step.name)),
    batches: list(inIt.map(({ batch }) => batch)),
    persons: list(persons.map((at) => names[at] ?? "")),
    from,
    to,
    sentence: `Too much for these days: ${window}: ${sum}; ${mend}`,
  };
}

function list(all: readonly string[]): string {
  const one = [...new Set(all)];
  const more = one.length - MOST_NAMES;
  return `${one.slice(0, MOST_NAMES).join(", ")}${more > 0 ? ` and ${more} more` : ""}`;
}
