import { daysUpTo, type Stock, type Units } from "./stocks-by-day";

/** Who wants units of some sorts that are there up to a day, and what is held for it. */
export interface Claim {
  readonly sorts: readonly number[];
  /** Day up to which its units may be exchanged for others. */
  latest: number;
  /** By sort: units held, by index of the day in the sort's days; null for none ever. */
  readonly held: (Float64Array | null)[];
  /** By sort: index of the first day of which units are held; Infinity for none. */
  readonly first: Float64Array;
}

/** Units that a claim gets, and those that it gives up for them; null for none. */
export interface Exchange {
  readonly to: Claim;
  readonly gets: Units;
  readonly gives: Units | null;
}

/** A search for units on behalf of one claim. What it has reached stands while nothing is moved. */
export interface UnitSearch {
  /** Free units within reach once the claim may take those up to a day; null for none. */
  freeUpTo(day: number): Units | null;
  /** The exchanges by which the claim gets what was found free: from the free units to the claim. */
  wayTo(free: Units): readonly Exchange[];
}

/** Units of a sort up to a day come within reach: the seeker's own, or for some that a claim gives. */
interface Reached {
  /** So many of the sort's days, from the first. */
  readonly days: number;
  readonly by: Claim;
  /** Null where it is the seeker's. */
  readonly given: Units | null;
}

/**
 * Starts a search for free units, by exchanging what others hold where need be.
 *
 * Method: breadth first along augmenting paths. Whoever takes units of a day takes those of any
 *   earlier day, so what is reached of a sort is its days up to some day; and a search that found
 *   nothing goes on from there when a later day is allowed.
 */
export function searchFor(
  seeker: Claim,
  stocks: readonly Stock[],
  claims: readonly Claim[],
): UnitSearch {
  const reachedDays = new Int32Array(stocks.length);
  const steps: Reached[][] = stocks.map(() => []);
  const seen = new Set([seeker]);
  return {
    freeUpTo: (day) => {
      const raised: number[] = [];
      const raise = (latest: number, by: Claim, given: Units | null): Units | null => {
        for (const sort of by.sorts) {
          const stock = stocks[sort] as Stock;
          const days = daysUpTo(stock.days, latest);
          if (days <= (reachedDays[sort] as number)) continue;
          reachedDays[sort] = days;
          steps[sort]?.push({ days, by, given });
          if (stock.firstFree < days) return { sort, at: stock.firstFree };
          raised.push(sort);
        }
        return null;
      };
      let found = raise(day, seeker, null);
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
    },
    wayTo: (free) => {
      const way: Exchange[] = [];
      for (let gets: Units | null = free; gets !== null; ) {
        const { sort, at }: Units = gets;
        const step = steps[sort]?.find(({ days }) => days > at) as Reached;
        way.push({ to: step.by, gets, gives: step.given });
        gets = step.given;
      }
      return way;
    },
  };
}
