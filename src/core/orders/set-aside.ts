import { madeOnce } from "../made-once";
import { claimsOnSupplies } from "../mathematics";

/** What one order still asks. */
export interface Asked {
  /** Whole number, 0 or more. */
  readonly plants: number;
  /** Last civil day on which plants are in time. */
  readonly by: number;
  /** By index of the supply: whether the order takes its variety. */
  readonly takes: readonly boolean[];
}

/** Plants of one batch, of one possible course. */
export interface Supply {
  /** Whole number, 0 or more. */
  readonly plants: number;
  /** Civil day on which they are ready. */
  readonly day: number;
}

export interface Filling {
  /** Plants set aside that are ready by the order's day. */
  readonly inTime: number;
  /** The order's day where all are in time, else the day on which all are ready; null for never. */
  readonly fullOn: number | null;
}

/**
 * Sets plants aside for orders in the best way: as many as can be in time in all, and of the ways
 * that do that the one that fills an earlier order first. Plants that come late for an order fill it
 * where no other order needs them to be in time.
 *
 * @param asked in the order in which they are served, the earliest day first
 *
 * Method: a maximum flow, order by order along augmenting paths (see claims-on-supplies.ts). What an order
 *   has in time is exchanged only for others in time, what it has late for what is no later.
 */
export function setAside(asked: readonly Asked[], supplies: readonly Supply[]): readonly Filling[] {
  return settingAside(asked)(supplies);
}

/** The same for many possible courses of the same batches, whose sorts are found once. */
export function settingAside(
  asked: readonly Asked[],
): (supplies: readonly Supply[]) => readonly Filling[] {
  const { sortOf, sorts, takenBy } = sortsOf(asked);
  return (supplies) => {
    const units = supplies.map(({ plants, day }) => ({ units: plants, day }));
    const ledger = claimsOnSupplies(units, sortOf, sorts);
    const inTime = asked.map(({ plants, by }, order) => {
      const claim = ledger.newClaim(takenBy[order] as readonly number[], by);
      const free = ledger.takeFree(claim, plants);
      return free === plants ? free : free + ledger.fill(claim, by, plants - free);
    });
    return asked.map(({ plants, by }, order) => {
      let filled = inTime[order] as number;
      let fullOn = by;
      if (filled < plants) {
        const claim = ledger.newClaim(takenBy[order] as readonly number[], by);
        for (const day of ledger.days) {
          if (day <= by) continue;
          const more = ledger.fill(claim, day, plants - filled);
          if (more === 0) continue;
          filled += more;
          fullOn = day;
          claim.latest = day;
          if (filled === plants) break;
        }
      }
      return { inTime: inTime[order] as number, fullOn: filled < plants ? null : fullOn };
    });
  };
}

/** Batches that all orders take alike are of one sort: of one day, their plants are the same plants. */
function sortsOf(asked: readonly Asked[]): {
  /** By index of the supply; -1 where no order takes it. */
  readonly sortOf: readonly number[];
  readonly sorts: number;
  /** By order: the sorts that it takes. */
  readonly takenBy: readonly (readonly number[])[];
} {
  const sortNamed = new Map<string, number>();
  const takenBy: number[][] = asked.map(() => []);
  const sortOf = (asked[0]?.takes ?? []).map((_, supply) => {
    const takers = asked.flatMap(({ takes }, order) => (takes[supply] ? [order] : []));
    if (takers.length === 0) return -1;
    return madeOnce(sortNamed, takers.join(), () => {
      const sort = sortNamed.size;
      for (const order of takers) takenBy[order]?.push(sort);
      return sort;
    });
  });
  return { sortOf, sorts: sortNamed.size, takenBy };
}
