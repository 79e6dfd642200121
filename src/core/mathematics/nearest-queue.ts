/** A queue that gives back the nearest first. */
export interface NearestQueue {
  put(node: number, distance: number): void;
  /** The node put in with the least distance; -1 when none is left. */
  take(): number;
  /** The distance of the node taken last. */
  distance(): number;
}

/**
 * An empty queue.
 *
 * Method: binary heap (Williams, J. W. J. (1964). Algorithm 232: Heapsort. Comm. ACM 7, 347-348).
 */
export function nearestQueue(): NearestQueue {
  const nodes: number[] = [];
  const distances: number[] = [];
  let taken = 0;
  const swap = (a: number, b: number) => {
    const node = nodes[a] as number;
    const distance = distances[a] as number;
    nodes[a] = nodes[b] as number;
    distances[a] = distances[b] as number;
    nodes[b] = node;
    distances[b] = distance;
  };
  const nearer = (a: number, b: number) => (distances[a] as number) < (distances[b] as number);
  return {
    put: (node, distance) => {
      let at = nodes.push(node) - 1;
      distances.push(distance);
      while (at > 0) {
        const above = (at - 1) >> 1;
        if (!nearer(at, above)) break;
        swap(at, above);
        at = above;
      }
    },
    take: () => {
      if (nodes.length === 0) return -1;
      swap(0, nodes.length - 1);
      const node = nodes.pop() as number;
      taken = distances.pop() as number;
      let at = 0;
      for (;;) {
        let least = at;
        const left = 2 * at + 1;
        if (left < nodes.length && nearer(left, least)) least = left;
        if (left + 1 < nodes.length && nearer(left + 1, least)) least = left + 1;
        if (least === at) return node;
        swap(at, least);
        at = least;
      }
    },
    distance: () => taken,
  };
}
