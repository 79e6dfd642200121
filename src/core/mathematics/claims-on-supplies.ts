import { type Claim, searchFor, type UnitSearch } from "./search-for-units";
import { daysUpTo, type Stock, type Supply, stocksOf, type Units } from "./stocks-by-day";

/** Who has what of some supplies. */
export interface ClaimsOnSupplies {
  /** Days on which units come to be there, rising. */
  readonly days: readonly number[];
  newClaim(sorts: readonly number[], latest: number): Claim;
  /** Gives a claim units that nobody has, the latest ones first; how many. */
  takeFree(claim: Claim, need: number): number;
  /** Gives a claim units there up to a day, if need be by exchanging what others hold; how many. */
  fill(claim: Claim, upTo: number, need: number): number;
}

/**
 * Keeps who has which units, and finds units for a claim by moving what others hold, so that in all
 * as much is held as can be.
 *
 * @param sortOf by index of the supply: its sort, from 0; -1 where nobody wants it
 *
 * Method: augmenting paths of a maximum flow.
 * Source: Ford, L. R., Fulkerson, D. R. (1956). Maximal flow through a network. Canad. J. Math. 8,
 *   399-404.
 */
export function claimsOnSupplies(
  supplies: readonly Supply[],
  sortOf: readonly number[],
  sorts: number,
): ClaimsOnSupplies {
  const { stocks, days } = stocksOf(supplies, sortOf, sorts);
  const stockOf = (sort: number) => stocks[sort] as Stock;
  const claims: Claim[] = [];
  let search: { readonly by: Claim; readonly units: UnitSearch } | null = null;

  function hold(claim: Claim, { sort, at }: Units, units: number): void {
    const held = claim.held[sort] ?? new Float64Array(stockOf(sort).days.length);
    claim.held[sort] = held;
    held[at] = (held[at] as number) + units;
    if (units > 0) claim.first[sort] = Math.min(at, claim.first[sort] as number);
    else if (held[at] === 0 && claim.first[sort] === at) {
      let next = at;
      while (next < held.length && held[next] === 0) next += 1;
      claim.first[sort] = next < held.length ? next : Number.POSITIVE_INFINITY;
    }
  }

  function takeFrom({ sort, at }: Units, units: number): void {
    const stock = stockOf(sort);
    stock.free[at] = (stock.free[at] as number) - units;
    while (stock.free[stock.firstFree] === 0) stock.firstFree += 1;
    search = null;
  }

  /** Moves units along the way by which free ones were reached; how many. */
  function moveAlong(free: Units, need: number, { wayTo }: UnitSearch): number {
    const way = wayTo(free);
    let most = Math.min(need, stockOf(free.sort).free[free.at] as number);
    for (const { to, gives } of way) {
      if (gives !== null) most = Math.min(most, to.held[gives.sort]?.[gives.at] as number);
    }
    for (const { to, gets, gives } of way) {
      hold(to, gets, most);
      if (gives !== null) hold(to, gives, -most);
    }
    takeFrom(free, most);
    return most;
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
          const units = Math.min(free[at] as number, need - taken);
          if (units === 0) continue;
          hold(claim, { sort, at }, units);
          takeFrom({ sort, at }, units);
          taken += units;
        }
      }
      return taken;
    },
    fill: (claim, upTo, need) => {
      let filled = 0;
      while (filled < need) {
        if (search?.by !== claim) search = { by: claim, units: searchFor(claim, stocks, claims) };
        const { units } = search;
        const free = units.freeUpTo(upTo);
        if (free === null) break;
        filled += moveAlong(free, need - filled, units);
      }
      return filled;
    },
  };
}
