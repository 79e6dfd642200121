import type { CivilDay } from "../dates";
import { madeOnce } from "../made-once";
import { canDo } from "./crew";
import type { WorkQuestion, WorkTask } from "./work-question";

/** Tasks that the same persons can do in the same window: to the plan they are one. */
export interface TaskGroup {
  /** Which persons can do them: an index in `abilities`. */
  readonly ability: number;
  readonly from: CivilDay;
  readonly usual: CivilDay;
  /** Null when the last day is past already, so that there is none to keep. */
  readonly by: CivilDay | null;
  readonly asked: number;
  /** Indexes of the tasks, in their order. */
  readonly tasks: readonly number[];
}

export interface GroupedTasks {
  readonly groups: readonly TaskGroup[];
  /** Indexes of the persons who can do a kind of work; kinds that the same persons do are one. */
  readonly abilities: readonly (readonly number[])[];
  /** Persons who have the same abilities. */
  readonly teams: readonly Team[];
}

export interface Team {
  readonly persons: readonly number[];
  /** Indexes in `abilities`. */
  readonly abilities: ReadonlySet<number>;
}

/** Puts tasks together that the plan need not tell apart, and persons likewise. */
export function groupTasks({ tasks, crew, first }: WorkQuestion): GroupedTasks {
  const abilities: number[][] = [];
  const abilityOf = new Map<string, number>();
  const abilityOfKind = new Map<string, number>();
  const ability = (kind: string): number =>
    madeOnce(abilityOfKind, kind, () => {
      const persons = crew.flatMap((person, at) => (canDo(person, kind) ? [at] : []));
      return madeOnce(abilityOf, persons.join(" "), () => abilities.push(persons) - 1);
    });
  const groups: (TaskGroup & { asked: number; tasks: number[] })[] = [];
  const groupOf = new Map<string, number>();
  tasks.forEach((task, at) => {
    const window = windowOf(task, first);
    const of = ability(task.kind);
    const key = `${of} ${window.from} ${window.usual} ${window.by}`;
    const index = madeOnce(
      groupOf,
      key,
      () => groups.push({ ability: of, ...window, asked: 0, tasks: [] }) - 1,
    );
    const group = groups[index] as (typeof groups)[number];
    groups[index] = { ...group, asked: group.asked + task.asked };
    group.tasks.push(at);
  });
  return { groups, abilities, teams: teamsOf(abilities, crew.length) };
}

/** A window whose start is past begins on the first day; one that is past altogether has no end. */
function windowOf({ from, usual, by }: WorkTask, first: CivilDay) {
  const notBefore = (day: CivilDay): CivilDay => (day < first ? first : day);
  return { from: notBefore(from), usual: notBefore(usual), by: by < first ? null : by };
}

function teamsOf(abilities: readonly (readonly number[])[], persons: number): Team[] {
  const teams: { persons: number[]; abilities: Set<number> }[] = [];
  const teamOf = new Map<string, number>();
  for (let person = 0; person < persons; person += 1) {
    const can = abilities.flatMap((able, at) => (able.includes(person) ? [at] : []));
    if (can.length === 0) continue;
    const index = madeOnce(
      teamOf,
      can.join(" "),
      () => teams.push({ persons: [], abilities: new Set(can) }) - 1,
    );
    teams[index]?.persons.push(person);
  }
  return teams;
}
