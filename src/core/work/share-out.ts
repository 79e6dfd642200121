import type { CivilDay } from "../dates";
import { madeOnce } from "../made-once";
import type { CheapestFlow } from "../mathematics";
import { hundredthsOn } from "./crew";
import type { GroupedTasks } from "./group-tasks";
import type { WorkNetwork } from "./work-network";
import type { WorkQuestion } from "./work-question";

/** What one person does of one task on one day. */
export interface Piece {
  readonly task: number;
  readonly person: number;
  readonly day: CivilDay;
  /** Hundredths of an hour, above 0. */
  readonly hundredths: number;
}

export interface SharedOut {
  readonly pieces: readonly Piece[];
  readonly after: readonly number[];
  readonly unplaced: readonly number[];
}

interface Portion {
  readonly of: number;
  amount: number;
}

/** A question of work, put together for the network, and the cheapest flow through it. */
export interface SolvedWork {
  readonly question: WorkQuestion;
  readonly grouped: GroupedTasks;
  readonly network: WorkNetwork;
  readonly flow: CheapestFlow;
}

/**
 * Gives what flows from groups to teams to the single tasks and persons. Within a group the tasks
 * come one after another, in their order, so that few are split; within a team a task goes whole to
 * the person who has most time left, if it can.
 */
export function shareOut({ question, grouped, network, flow: { along } }: SolvedWork): SharedOut {
  const after = question.tasks.map(() => 0);
  const unplaced = question.tasks.map(({ asked }) => asked);
  const queues = grouped.groups.map(({ tasks }) =>
    tasks.map((task): Portion => ({ of: task, amount: unplaced[task] as number })),
  );
  const ofWork = new Map<string, Portion[]>();
  for (const { edge, group, day } of network.workEdges) {
    const key = `${grouped.groups[group]?.ability} ${day}`;
    for (const part of takeFrom(queues[group] as Portion[], along[edge] as number)) {
      unplaced[part.of] = (unplaced[part.of] as number) - part.amount;
      madeOnce(ofWork, key, () => []).push(part);
    }
  }
  network.afterEdges.forEach((edge, group) => {
    if (edge === null) return;
    for (const { of, amount } of takeFrom(queues[group] as Portion[], along[edge] as number)) {
      after[of] = (after[of] as number) + amount;
      unplaced[of] = (unplaced[of] as number) - amount;
    }
  });
  const ofTeam = new Map<string, { team: number; day: CivilDay; parts: Portion[] }>();
  for (const { edge, ability, team, day } of network.teamEdges) {
    const parts = takeFrom(ofWork.get(`${ability} ${day}`) ?? [], along[edge] as number);
    const known = madeOnce(ofTeam, `${team} ${day}`, () => ({ team, day, parts: [] }));
    known.parts.push(...parts);
  }
  const pieces = [...ofTeam.values()].flatMap(({ team, day, parts }) =>
    amongPersons(question, { persons: grouped.teams[team]?.persons ?? [], day, parts }),
  );
  pieces.sort((a, b) => a.day - b.day || a.person - b.person || a.task - b.task);
  return { pieces, after, unplaced };
}

/** Takes an amount off the front of a queue. */
function takeFrom(queue: Portion[], amount: number): Portion[] {
  const taken: Portion[] = [];
  let left = amount;
  while (left > 0) {
    const front = queue[0];
    if (front === undefined) throw new Error("more flows than was asked for");
    const part = Math.min(front.amount, left);
    taken.push({ of: front.of, amount: part });
    front.amount -= part;
    left -= part;
    if (front.amount === 0) queue.shift();
  }
  return taken;
}

function amongPersons(
  { crew }: WorkQuestion,
  {
    persons,
    day,
    parts,
  }: {
    readonly persons: readonly number[];
    readonly day: CivilDay;
    readonly parts: readonly Portion[];
  },
): Piece[] {
  const rooms = persons.map((person): Portion => {
    const one = crew[person];
    return { of: person, amount: one === undefined ? 0 : hundredthsOn(one, day) };
  });
  const pieces: Piece[] = [];
  const largestFirst = [...parts].sort((a, b) => b.amount - a.amount || a.of - b.of);
  for (const { of: task, amount } of largestFirst) {
    let left = amount;
    while (left > 0) {
      const most = rooms.reduce((best, room) => (room.amount > best.amount ? room : best));
      const hundredths = Math.min(most.amount, left);
      if (hundredths === 0) throw new Error("more flows to a team than it has");
      pieces.push({ task, person: most.of, day, hundredths });
      most.amount -= hundredths;
      left -= hundredths;
    }
  }
  return pieces;
}
