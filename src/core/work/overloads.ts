import type { CivilDay } from "../dates";
import { totalOf } from "../mathematics";
import type { TaskGroup } from "./group-tasks";
import type { SolvedWork } from "./share-out";

/**
 * Tasks that ask for more than the hands have that can do them in their windows. It is a proof:
 * each of the tasks can be done by these hands in these windows only. Hundredths of an hour.
 */
export interface Overload {
  /** Indexes in the question, in their order. */
  readonly tasks: readonly number[];
  readonly from: CivilDay;
  readonly to: CivilDay;
  /** Who can do any of them, whether there in those days or not. */
  readonly persons: readonly number[];
  /** The sum of the tasks. */
  readonly asked: number;
  /** The hours of every person on every day on which the person can do any of the tasks. */
  readonly there: number;
  /** asked - there: no fewer hours more will do, and so many will, each where it can be used. */
  readonly short: number;
}

/**
 * Finds the tasks that don't fit, with those that stand in their way: the smallest cut of the
 * network, taken apart where its parts share no hands on any day.
 *
 * @returns none when everything fits; else the short hours sum up to all that fits nowhere
 */
export function overloads({
  question: { tasks, first },
  grouped: { groups, abilities, teams },
  network: { groupNodes, hands },
  flow: { reached },
}: SolvedWork): Overload[] {
  const crowded = groups.flatMap((group, index) =>
    reached[groupNodes[index] as number] ? [{ group, slots: slotsOf(group) }] : [],
  );
  return together(crowded).map((part) => {
    const inIt = part.flatMap(({ group }) => group.tasks).sort((a, b) => a - b);
    const slots = new Map(part.flatMap((one) => one.slots).map((slot) => [slot.key, slot.there]));
    const persons = new Set(part.flatMap(({ group }) => abilities[group.ability] ?? []));
    const asked = inIt.reduce((sum, task) => sum + (tasks[task]?.asked ?? 0), 0);
    const there = totalOf([...slots.values()]);
    return {
      tasks: inIt,
      persons: [...persons].sort((a, b) => a - b),
      from: Math.min(...part.map(({ group }) => group.from)) as CivilDay,
      to: Math.max(...part.map(({ group }) => endOf(group))) as CivilDay,
      asked,
      there,
      short: asked - there,
    };
  });

  /** Every team and day at which tasks of a group can be done. */
  function slotsOf(group: TaskGroup): Slot[] {
    return teams.flatMap((team, index) => {
      if (!team.abilities.has(group.ability)) return [];
      const onDays = (hands[index] ?? []).slice(group.from - first, endOf(group) - first + 1);
      return onDays.flatMap((there, at) =>
        there === 0 ? [] : [{ key: `${index} ${group.from - first + at}`, there }],
      );
    });
  }
}

/** A group that may wait until after the plan is never crowded, so it has a last day. */
function endOf(group: TaskGroup): CivilDay {
  return group.by as CivilDay;
}

interface Crowded {
  readonly group: TaskGroup;
  readonly slots: readonly Slot[];
}

/** A team on a day. */
interface Slot {
  readonly key: string;
  readonly there: number;
}

/** Puts groups together that share a team on a day; without any, those of one kind of work. */
function together(crowded: readonly Crowded[]): Crowded[][] {
  const parts = new Set<Crowded[]>();
  const partOf = new Map<string, Crowded[]>();
  const join = (part: Crowded[], one: Crowded) => {
    part.push(one);
    for (const key of keysOf(one)) partOf.set(key, part);
  };
  for (const one of crowded) {
    const touched = new Set<Crowded[]>();
    for (const key of keysOf(one)) {
      const part = partOf.get(key);
      if (part !== undefined) touched.add(part);
    }
    const [first = [], ...others] = touched;
    parts.add(first);
    join(first, one);
    for (const other of others) {
      parts.delete(other);
      for (const member of other) join(first, member);
    }
  }
  return [...parts];
}

function keysOf({ group, slots }: Crowded): string[] {
  return slots.length === 0 ? [`nobody ${group.ability}`] : slots.map(({ key }) => key);
}
