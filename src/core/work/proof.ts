import { type CivilDay, daysLater } from "../dates";
import type { Task } from "../due";
import { totalOf } from "../mathematics";
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
  /** Whether somebody who may not do them has as many hours left in these days: hands there are, not for these. */
  readonly lacksWho: boolean;
  /** The days that are too full; where only one who may do it is lacking, those on which it is usual. */
  readonly days: readonly CivilDay[];
}

interface Planned {
  readonly timed: readonly TimedTask[];
  readonly names: readonly string[];
  /** Hundredths of an hour that a person has left on a day. */
  readonly left: (person: number, day: CivilDay) => number;
}

/**
 * @param timed  the tasks by their indexes in the overload
 * @param names  the persons by theirs
 */
export function proofOf(
  { tasks, from, to, persons, asked, there, short }: Overload,
  { timed, names, left }: Planned,
): Proof {
  const inIt = tasks.map((at) => timed[at] as TimedTask);
  const all = Array.from({ length: to - from + 1 }, (_, at) => daysLater(from, at));
  const lacksWho = names.some(
    (_, person) =>
      !persons.includes(person) && totalOf(all.map((day) => left(person, day))) >= short,
  );
  const usual = new Set(inIt.map(({ doOn }) => Math.min(Math.max(doOn, from), to)));
  return {
    tasks: each(inIt.map(({ step }) => step.name)),
    batches: each(inIt.map(({ batch }) => batch)),
    persons: each(persons.map((at) => names[at] ?? "")),
    from,
    to,
    asked: hoursOf(asked),
    there: hoursOf(there),
    short: hoursOf(short),
    lacksWho,
    days: lacksWho ? all.filter((day) => usual.has(day)) : all,
  };
}

function each(names: readonly string[]): readonly string[] {
  return [...new Set(names)];
}
