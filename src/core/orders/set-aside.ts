/** Plants of one batch, of one possible course. */
export interface Supply {
  /** Whole number, 0 or more. */
  readonly plants: number;
  /** Civil day on which they are ready. */
  readonly day: number;
}

/** What one order still asks. */
export interface Asked {
  /** Whole number, 0 or more. */
  readonly plants: number;
  /** Last civil day on which plants are in time. */
  readonly by: number;
  /** By place of the supply: whether the order takes its variety. */
  readonly takes: readonly boolean[];
}

export interface Filling {
  /** Plants set aside that are ready by the order's day. */
  readonly inTime: number;
  /** The day on which all are ready; null when there are never enough. */
  readonly fullOn: number | null;
}

/**
 * Sets plants aside for orders in the best way: as many as can be in time in all, and of the ways
 * that do that the one that fills an earlier order first. Plants that come late for an order fill it
 * where no other order needs them to be in time.
 *
 * @param asked in the order in which they are served, the earliest day first
 *
 * Method: a maximum flow from batches to orders, order by order along augmenting paths (Ford, L. R.,
 *   Fulkerson, D. R. (1956). Canad. J. Math. 8, 399-404): a path for one order moves what others
 *   have to other batches, and never takes from them. Ends that a search has found to lead nowhere
 *   lead nowhere for the rest of that order, so each is looked at once.
 */
export function setAside(asked: readonly Asked[], supplies: readonly Supply[]): readonly Filling[] {
  const left = supplies.map(({ plants }) => plants);
  const byDay = supplies.map((_, place) => place);
  byDay.sort((a, b) => dayOf(a) - dayOf(b) || a - b);
  const given = asked.map(() => new Float64Array(supplies.length));
  /** Up to which day plants may be set aside for each order; rises as late ones are. */
  const upTo = asked.map(({ by }) => by);

  function dayOf(supply: number): number {
    return supplies[supply]?.day as number;
  }
  const givenTo = (order: number) => given[order] as Float64Array;

  /** Fills an order from one batch, if need be by moving what others have of it; how many plants. */
  function fillFrom(order: number, first: number, need: number, dead: Uint8Array): number {
    let filled = 0;
    while (filled < need && dead[first] === 0) {
      const path = pathFrom(order, first, dead);
      if (path.length === 0) break;
      const last = path[path.length - 1] as Move;
      const most = Math.min(
        need - filled,
        left[last.supply] as number,
        ...path.slice(1).map(({ order: other, from }) => givenTo(other)[from] as number),
      );
      for (const { order: taker, from, supply } of path) {
        const gifts = givenTo(taker);
        gifts[supply] = (gifts[supply] as number) + most;
        if (from !== -1) gifts[from] = (gifts[from] as number) - most;
      }
      left[last.supply] = (left[last.supply] as number) - most;
      filled += most;
    }
    return filled;
  }

  /** The moves that free plants for an order, the order's own first; none when there is no way. */
  function pathFrom(order: number, first: number, dead: Uint8Array): readonly Move[] {
    const reached: Move[] = [{ order, from: -1, supply: first, before: -1 }];
    const seen = new Uint8Array(supplies.length);
    seen[first] = 1;
    // What an order can take up to a day is looked through once.
    const lookedUpTo = new Float64Array(asked.length).fill(Number.NEGATIVE_INFINITY);
    for (let at = 0; at < reached.length; at += 1) {
      const { supply } = reached[at] as Move;
      if ((left[supply] as number) > 0) return movesTo(reached, at);
      for (let other = 0; other < asked.length; other += 1) {
        if (other === order || (givenTo(other)[supply] as number) === 0) continue;
        const { by, takes } = asked[other] as Asked;
        // Plants that are in time for an order are exchanged for others in time.
        const latest = dayOf(supply) <= by ? by : (upTo[other] as number);
        if (latest <= (lookedUpTo[other] as number)) continue;
        lookedUpTo[other] = latest;
        for (const next of byDay) {
          if (dayOf(next) > latest) break;
          if (!takes[next] || seen[next] === 1 || dead[next] === 1) continue;
          seen[next] = 1;
          reached.push({ order: other, from: supply, supply: next, before: at });
        }
      }
    }
    for (const { supply } of reached) dead[supply] = 1;
    return [];
  }

  /** Sets plants in time aside that no order has yet; most orders need no more than that. */
  function takeFree(order: number): number {
    const { plants, by, takes } = asked[order] as Asked;
    let filled = 0;
    for (const supply of byDay) {
      if (filled === plants || dayOf(supply) > by) break;
      if (!takes[supply]) continue;
      const free = Math.min(left[supply] as number, plants - filled);
      left[supply] = (left[supply] as number) - free;
      givenTo(order)[supply] = free;
      filled += free;
    }
    return filled;
  }

  const inTime = asked.map(({ plants, by, takes }, order) => {
    const dead = new Uint8Array(supplies.length);
    let filled = takeFree(order);
    for (const supply of byDay) {
      if (filled === plants || dayOf(supply) > by) break;
      if (takes[supply]) filled += fillFrom(order, supply, plants - filled, dead);
    }
    return filled;
  });
  return asked.map(({ plants, by, takes }, order) => {
    let filled = inTime[order] as number;
    let fullOn = by;
    const dead = new Uint8Array(supplies.length);
    for (const supply of byDay) {
      if (filled === plants) break;
      if (dayOf(supply) <= by || !takes[supply]) continue;
      const more = fillFrom(order, supply, plants - filled, dead);
      if (more === 0) continue;
      filled += more;
      fullOn = dayOf(supply);
      upTo[order] = fullOn;
    }
    return { inTime: inTime[order] as number, fullOn: filled < plants ? null : fullOn };
  });
}

/** An order gets plants of a batch, for those of another that it gives up (-1: for none). */
interface Move {
  readonly order: number;
  readonly from: number;
  readonly supply: number;
  /** Place of the move before in what was reached. */
  readonly before: number;
}

function movesTo(reached: readonly Move[], last: number): readonly Move[] {
  const moves: Move[] = [];
  for (let at = last; at !== -1; at = (reached[at] as Move).before) {
    moves.unshift(reached[at] as Move);
  }
  return moves;
}
