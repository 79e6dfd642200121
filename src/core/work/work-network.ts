import { type CivilDay, daysLater } from "../dates";
import { madeOnce } from "../made-once";
import type { FlowEdge, FlowQuestion } from "../mathematics";
import { hundredthsOn, isClosed } from "./crew";
import type { GroupedTasks, TaskGroup } from "./group-tasks";
import type { WorkQuestion } from "./work-question";

/** Where the hours of the groups can go, as a network: groups, kinds of work by day, teams by day. */
export interface WorkNetwork extends FlowQuestion {
  readonly groupNodes: readonly number[];
  /** From a group to its kind of work on a day, earlier days first. */
  readonly workEdges: readonly WorkEdge[];
  /** From a kind of work on a day to a team that does it. */
  readonly teamEdges: readonly TeamEdge[];
  /** By group: the edge to the time after the last day that is planned; null where there is none. */
  readonly afterEdges: readonly (number | null)[];
  /** By team: what it has on each day from the first, hundredths of an hour. */
  readonly hands: readonly (readonly number[])[];
}

export interface WorkEdge {
  readonly edge: number;
  readonly group: number;
  readonly day: CivilDay;
}

export interface TeamEdge {
  readonly edge: number;
  readonly ability: number;
  readonly team: number;
  readonly day: CivilDay;
}

/** A day's wait of a late task weighs more than any care for usual days. */
const LATE_DAY = 1_000_000;
const ENDLESS = Number.MAX_SAFE_INTEGER;
const SOURCE = 0;
const SINK = 1;
const AFTER = 2;

export function workNetwork(grouped: GroupedTasks, question: WorkQuestion): WorkNetwork {
  const { groups, teams } = grouped;
  const { first, last } = question;
  const network = growingNetwork();
  const { join } = network;
  const hands = teams.map(({ persons }) => handsOf(persons, question));
  const { workNode, teamEdges } = workNodes(network, { grouped, hands, first });
  const workEdges: WorkEdge[] = [];
  const afterEdges: (number | null)[] = [];
  const groupNodes = groups.map((group, index) => {
    const made = network.node();
    join({ from: SOURCE, to: made, capacity: group.asked, cost: 0 });
    const goesOn = (to: number, day: CivilDay) =>
      join({ from: made, to, capacity: group.asked, cost: costOn(group, day, first) });
    const end = group.by === null || group.by > last ? last : group.by;
    for (let day = group.from; day <= end; day = daysLater(day, 1)) {
      const work = workNode(group.ability, day);
      if (work !== null) workEdges.push({ edge: goesOn(work, day), group: index, day });
    }
    const mayWait = group.by === null || group.by > last;
    const afterwards = daysLater(last, 1);
    const soonest = group.usual > afterwards && group.by !== null ? group.usual : afterwards;
    afterEdges.push(mayWait ? goesOn(AFTER, soonest) : null);
    return made;
  });
  join({ from: AFTER, to: SINK, capacity: ENDLESS, cost: 0 });
  return {
    nodeCount: network.nodeCount(),
    edges: network.edges,
    source: SOURCE,
    sink: SINK,
    groupNodes,
    workEdges,
    teamEdges,
    afterEdges,
    hands,
  };
}

/** Source, sink and the time after, to which nodes and edges are added. */
function growingNetwork() {
  const edges: FlowEdge[] = [];
  let nodeCount = 3;
  return {
    edges,
    nodeCount: () => nodeCount,
    node: () => {
      nodeCount += 1;
      return nodeCount - 1;
    },
    join: (edge: FlowEdge): number => edges.push(edge) - 1,
  };
}

/**
 * Adds the teams' days, and kinds of work on a day as they are asked for.
 *
 * @returns workNode the node of a kind of work on a day; null when nobody is there to do it
 */
function workNodes(
  { node, join }: ReturnType<typeof growingNetwork>,
  {
    grouped: { teams },
    hands,
    first,
  }: {
    readonly grouped: GroupedTasks;
    readonly hands: readonly (readonly number[])[];
    readonly first: CivilDay;
  },
) {
  const teamNodes = hands.map((onDays, team) =>
    onDays.map((there, at) => {
      if (there === 0) return null;
      const made = node();
      join({ from: made, to: SINK, capacity: there, cost: 0 });
      return { node: made, team, day: daysLater(first, at) };
    }),
  );
  const teamEdges: TeamEdge[] = [];
  const nodes = new Map<string, number | null>();
  const workNode = (ability: number, day: CivilDay): number | null =>
    madeOnce(nodes, `${ability} ${day}`, () => {
      const able = teamNodes.flatMap((onDays, team) => {
        const there = onDays[day - first] ?? null;
        return there !== null && teams[team]?.abilities.has(ability) ? [there] : [];
      });
      if (able.length === 0) return null;
      const made = node();
      for (const there of able) {
        const edge = join({ from: made, to: there.node, capacity: ENDLESS, cost: 0 });
        teamEdges.push({ edge, ability, team: there.team, day });
      }
      return made;
    });
  return { workNode, teamEdges };
}

function costOn({ by, usual }: TaskGroup, day: CivilDay, first: CivilDay): number {
  return by === null ? (day - first) * LATE_DAY : Math.abs(day - usual);
}

function handsOf(persons: readonly number[], question: WorkQuestion): number[] {
  const { crew, closed, first, last } = question;
  const onDays: number[] = [];
  for (let day = first; day <= last; day = daysLater(day, 1)) {
    let there = 0;
    if (!isClosed(closed, day)) {
      for (const person of persons) {
        const one = crew[person];
        if (one !== undefined) there += hundredthsOn(one, day);
      }
    }
    onDays.push(there);
  }
  return onDays;
}
