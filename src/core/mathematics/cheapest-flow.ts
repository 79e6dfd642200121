import { nearestQueue } from "./nearest-queue";

/** A way from one node to another, for whole units. */
export interface FlowEdge {
  readonly from: number;
  readonly to: number;
  /** Whole units that it takes at most. */
  readonly capacity: number;
  /** Of one unit; a whole number, 0 or more. */
  readonly cost: number;
}

export interface FlowQuestion {
  /** Nodes go by whole numbers from 0. */
  readonly nodeCount: number;
  readonly edges: readonly FlowEdge[];
  readonly source: number;
  readonly sink: number;
}

export interface CheapestFlow {
  /** Whole units along each edge, in the order of the edges. */
  readonly along: readonly number[];
  /** Units sent from the source to the sink in all. */
  readonly sent: number;
  /**
   * Whether a unit more could still reach a node from the source: the source's side of the smallest
   * cut, the proof that no more can be sent.
   */
  readonly reached: readonly boolean[];
}

/** One round of sending along shortest ways. */
interface Phase {
  /** By node: how many edges from the source; -1 where no shortest way passes. */
  readonly level: readonly number[];
  /** By node: the arc to try next, by index in its list; moves on as arcs are used up. */
  readonly next: number[];
}

/**
 * Sends as much as can be sent from the source to the sink, at the least cost. In whole numbers
 * throughout, so that the answer is exact; the same question has the same answer.
 *
 * Longer than most: one algorithm, whose three steps work on the same few lists.
 *
 * Method: primal-dual. Nodes carry their distance from the source; as much as possible is sent
 *   along shortest ways only (blocking flows by levels), then the distances are made anew.
 * Source: Ford, L. R. & Fulkerson, D. R. (1962). Flows in Networks, ch. III; Edmonds, J. & Karp,
 *   R. M. (1972). J. ACM 19, 248-264 (distances kept from 0 up); Dinic, E. A. (1970). Soviet Math.
 *   Doklady 11, 1277-1280 (levels).
 */
export function cheapestFlow({ nodeCount, edges, source, sink }: FlowQuestion): CheapestFlow {
  // Edge e is the arc 2e, and what could be taken back of it the arc 2e + 1.
  const room: number[] = [];
  const cost: number[] = [];
  const target: number[] = [];
  const arcsOf: number[][] = Array.from({ length: nodeCount }, () => []);
  for (const { from, to, capacity, cost: unitCost } of edges) {
    arcsOf[from]?.push(room.length);
    room.push(capacity);
    cost.push(unitCost);
    target.push(to);
    arcsOf[to]?.push(room.length);
    room.push(0);
    cost.push(-unitCost);
    target.push(from);
  }
  const height: number[] = Array<number>(nodeCount).fill(0);
  const beyond = (arc: number) => target[arc] as number;
  /** What a unit costs along an arc beside what the heights say: 0 on the shortest ways. */
  const detour = (node: number, arc: number) =>
    (cost[arc] as number) + (height[node] as number) - (height[beyond(arc)] as number);

  const distances = (): number[] => {
    const distance: number[] = Array<number>(nodeCount).fill(Number.POSITIVE_INFINITY);
    const queue = nearestQueue();
    distance[source] = 0;
    queue.put(source, 0);
    for (let node = queue.take(); node !== -1; node = queue.take()) {
      if (queue.distance() > (distance[node] as number)) continue;
      for (const arc of arcsOf[node] as number[]) {
        if (room[arc] === 0) continue;
        const reach = (distance[node] as number) + detour(node, arc);
        if (reach < (distance[beyond(arc)] as number)) {
          distance[beyond(arc)] = reach;
          queue.put(beyond(arc), reach);
        }
      }
    }
    return distance;
  };

  const levelsOnShortest = (): number[] => {
    const level: number[] = Array<number>(nodeCount).fill(-1);
    level[source] = 0;
    const line = [source];
    for (let at = 0; at < line.length; at += 1) {
      const node = line[at] as number;
      for (const arc of arcsOf[node] as number[]) {
        if (room[arc] === 0 || level[beyond(arc)] !== -1 || detour(node, arc) !== 0) continue;
        level[beyond(arc)] = (level[node] as number) + 1;
        line.push(beyond(arc));
      }
    }
    return level;
  };

  const send = (node: number, most: number, phase: Phase): number => {
    if (node === sink) return most;
    const { level, next } = phase;
    const arcs = arcsOf[node] as number[];
    let left = most;
    for (; (next[node] as number) < arcs.length; next[node] = (next[node] as number) + 1) {
      const arc = arcs[next[node] as number] as number;
      const on = beyond(arc);
      if (room[arc] === 0 || level[on] !== (level[node] as number) + 1) continue;
      if (detour(node, arc) !== 0) continue;
      const got = send(on, Math.min(left, room[arc] as number), phase);
      room[arc] = (room[arc] as number) - got;
      room[arc ^ 1] = (room[arc ^ 1] as number) + got;
      left -= got;
      // The arc may have room still, so it stays the next to try.
      if (left === 0) break;
    }
    return most - left;
  };

  let sent = 0;
  for (;;) {
    const distance = distances();
    const toSink = distance[sink] as number;
    if (toSink === Number.POSITIVE_INFINITY) {
      const along = edges.map((_, edge) => room[2 * edge + 1] as number);
      return { along, sent, reached: distance.map((one) => one !== Number.POSITIVE_INFINITY) };
    }
    for (let node = 0; node < nodeCount; node += 1) {
      height[node] = (height[node] as number) + Math.min(distance[node] as number, toSink);
    }
    for (let level = levelsOnShortest(); level[sink] !== -1; level = levelsOnShortest()) {
      const next = Array<number>(nodeCount).fill(0);
      sent += send(source, Number.MAX_SAFE_INTEGER, { level, next });
    }
  }
}
