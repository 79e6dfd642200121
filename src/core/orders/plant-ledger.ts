/** Plants of one batch, of one possible course. */
export interface Supply {
  /** Whole number, 0 or more. */
  readonly plants: number;
  /** Civil day on which they are ready. */
  readonly day: number;
}

/** What is held for an order, of plants that are ready up to a day. */
export interface Claim {
  readonly sorts: readonly number[];
  /** Civil day up to which its plants may be exchanged for others. */
  latest: number;
  /** By sort: plants held, by index of the day in the sort's days; null for none ever. */
  readonly held: (Float64Array | null)[];
  /** By sort: index of the first day of which plants are held; Infinity for none. */
  readonly first: Float64Array;
}

/** Who has what of the plants of one possible course. */
export interface PlantLedger {
  /** Days on which plants get ready, rising. */
  readonly days: readonly number[];
  newClaim(sorts: readonly number[], latest: number): Claim;
  /** Gives a claim plants that nobody has, the latest ones first; how many. */
  takeFree(claim: Claim, need: number): number;
  /** Gives a claim plants ready up to a day, if need be by exchanging what others hold; how many. */
  fill(claim: Claim, upTo: number, need: number): number;
}

/** Plants of one sort, by day. */
interface Stock {
  /** Rising. */
  readonly days: number[];
  readonly free: number[];
  /** Index of the first day of which plants are free. */
  firstFree: number;
}

/** Plants of a sort up to a day come within reach: the seeker's own, or for some that a claim gives. */
interface Reached {
  /** So many of the sort's days, from the first. */
  readonly days: number;
  /** Null for the seeker. */
  readonly claim: Claim | null;
  readonly given: Plants | null;
}

interface Plants {
  readonly sort: number;
  /** Index in the sort's days. */
  readonly at: number;
}

/**
 * Keeps who has which plants, and finds plants for a claim by moving what others hold.
 *
 * @param sortOf by index of the supply: its sort; -1 where nobody wants it
 *
 * Method: augmenting paths of a maximum flow (Ford, L. R., Fulkerson, D. R. (1956). Canad. J. Math.
 *   8, 399-404). Whoever takes plants of a day takes those of any earlier day, so what a search has
 *   reached of a sort is its days up to some day; and a search that found nothing goes on from
 *   there when a later day is allowed.
 */
export function plantLedger(
  supplies: readonly Supply[],
  sortOf: readonly number[],
  sorts: number,
): PlantLedger {
  const { stocks, days } = stocksOf(supplies, sortOf, sorts);
  const stockOf = (sort: number) => stocks[sort] as Stock;
  const claims: Claim[] = [];

  // The search that is going on: by sort how many days are reached, and by which steps.
  let seeker: Claim | null = null;
  const reachedDays = new Int32Array(sorts);
  const steps: Reached[][] = stocks.map(() => []);
  let seen = new Set<Claim>();

  function startSearch(claim: Claim): void {
    seeker = claim;
    reachedDays.fill(0);
    for (const list of steps) list.length = 0;
    seen = new Set([claim]);
  }

  /** Free plants within reach once the seeker may take those up to a day; null for none. */
  function freeWithinReach(claim: Claim, upTo: number): Plants | null {
    const raised: number[] = [];
    const raise = (latest: number, by: Claim | null, given: Plants | null): Plants | null => {
      for (const sort of by === null ? claim.sorts : by.sorts) {
        const stock = stockOf(sort);
        const reach = daysUpTo(stock.days, latest);
        if (reach <= (reachedDays[sort] as number)) continue;
        reachedDays[sort] = reach;
        steps[sort]?.push({ days: reach, claim: by, given });
        if (stock.firstFree < reach) return { sort, at: stock.firstFree };
        raised.push(sort);
      }
      return null;
    };
    let found = raise(upTo, null, null);
    for (let next = 0; found === null && next < raised.length; next += 1) {
      const sort = raised[next] as number;
      for (const other of claims) {
        const at = other.first[sort] as number;
        if (at >= (reachedDays[sort] as number) || seen.has(other)) continue;
        seen.add(other);
        found = raise(other.latest, other, { sort, at });
        if (found !== null) break;
      }
    }
    return found;
  }

  /** Moves plants along the way by which free ones were reached; how many. */
  function moveAlong(claim: Claim, free: Plants, need: number): number {
    const moves: { readonly to: Claim; readonly gets: Plants; readonly gives: Plants | null }[] =
      [];
    let most = Math.min(need, stockOf(free.sort).free[free.at] as number);
    for (let gets: Plants | null = free; gets !== null; ) {
      const { sort, at }: Plants = gets;
      const step = steps[sort]?.find((one) => one.days > at) as Reached;
      moves.push({ to: step.claim ?? claim, gets, gives: step.given });
      if (step.given !== null) {
        const holds = step.claim?.held[step.given.sort]?.[step.given.at] as number;
        most = Math.min(most, holds);
      }
      gets = step.given;
    }
    for (const { to, gets, gives } of moves) {
      hold(to, gets, most);
      if (gives !== null) hold(to, gives, -most);
    }
    takeFrom(free, most);
    return most;
  }

  function hold(claim: Claim, { sort, at }: Plants, plants: number): void {
    const held = claim.held[sort] ?? new Float64Array(stockOf(sort).days.length);
    claim.held[sort] = held;
    held[at] = (held[at] as number) + plants;
    if (plants > 0) claim.first[sort] = Math.min(at, claim.first[sort] as number);
    else if (held[at] === 0 && claim.first[sort] === at) {
      let next = at;
      while (next < held.length && held[next] === 0) next += 1;
      claim.first[sort] = next < held.length ? next : Number.POSITIVE_INFINITY;
    }
  }

  function takeFrom({ sort, at }: Plants, plants: number): void {
    const stock = stockOf(sort);
    stock.free[at] = (stock.free[at] as number) - plants;
    while (stock.free[stock.firstFree] === 0) stock.firstFree += 1;
    seeker = null;
  }

  return {
    days,
    newClaim: (own, latest) => {
      const first = new Float64Array(sorts).fill(Number.POSITIVE_INFINITY);
      const claim = { sorts: own, latest, held: stocks.map(() => null), first };
      claims.push(claim);
      return claim;
    },
    takeFree: (claim, need) => {
      let taken = 0;
      for (const sort of claim.sorts) {
        const { days: own, free, firstFree } = stockOf(sort);
        for (let at = daysUpTo(own, claim.latest) - 1; at >= firstFree && taken < need; at -= 1) {
          const plants = Math.min(free[at] as number, need - taken);
          if (plants === 0) continue;
          hold(claim, { sort, at }, plants);
          takeFrom({ sort, at }, plants);
          taken += plants;
        }
      }
      return taken;
    },
    fill: (claim, upTo, need) => {
      let filled = 0;
      while (filled < need) {
        if (seeker !== claim) startSearch(claim);
        const free = freeWithinReach(claim, upTo);
        if (free === null) break;
        filled += moveAlong(claim, free, need - filled);
      }
      return filled;
    },
  };
}

function stocksOf(
  supplies: readonly Supply[],
  sortOf: readonly number[],
  sorts: number,
): { readonly stocks: readonly Stock[]; readonly days: readonly number[] } {
  const stocks = Array.from({ length: sorts }, (): Stock => ({ days: [], free: [], firstFree: 0 }));
  const days: number[] = [];
  const count = supplies.length;
  // Day and index in one number: numbers alone are sorted fastest.
  const byDay = Float64Array.from(supplies, ({ day }, index) => day * count + index).sort();
  for (const key of byDay) {
    const day = Math.floor(key / count);
    const index = key - day * count;
    const stock = stocks[sortOf[index] ?? -1];
    const plants = supplies[index]?.plants ?? 0;
    if (stock === undefined || plants === 0) continue;
    if (days[days.length - 1] !== day) days.push(day);
    const last = stock.days.length - 1;
    if (stock.days[last] === day) stock.free[last] = (stock.free[last] as number) + plants;
    else {
      stock.days.push(day);
      stock.free.push(plants);
    }
  }
  return { stocks, days };
}

/** How many of the days, which rise, lie on or before a day. */
function daysUpTo(days: readonly number[], day: number): number {
  let low = 0;
  let high = days.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((days[middle] as number) <= day) low = middle + 1;
    else high = middle;
  }
  return low;
}
