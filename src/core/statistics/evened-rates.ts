import { madeOnce } from "../made-once";
import { spreadOf, type UncertainVariance } from "./batch-correlation";
import type { ComparedBatch, EvenedGroup } from "./evened-groups";

export interface EvenedRate extends UncertainVariance {
  /** Takes ÷ takes expected × the rate of all, 0 to 1. */
  readonly evenedRate: number;
  /** As many plants of one chance as would leave the rate as uncertain as it is. */
  readonly trials: number;
}

/** A batch with the share fitted to it; null where its whole stratum took, or none of it. */
interface SharedBatch extends ComparedBatch {
  readonly share: number | null;
}

/** Shares fitted to a group are no nearer to 0 and 1 than this, so that its plants can be counted. */
const NEAREST = 1e-9;

/**
 * The rate of each group, evened for its strata, with its variance; null where the group has no other
 * beside it.
 *
 * All that the rate is made of is uncertain: the group's own takes, what is expected of it, of which its
 * own takes are a part, and the rate of all.
 *
 * Method: how far the rate moves with each batch's takes, to first order, times how much these vary
 *   about the share fitted to them. With one stratum it is the variance of the group's plain rate.
 * Source: ours, the delta method; npm run check:takes shows how often ranges from it hold.
 */
export function evenedRates(
  batches: readonly SharedBatch[],
  groups: readonly EvenedGroup[],
  correlation: number,
): readonly (EvenedRate | null)[] {
  const strata = new Map<number, { readonly cells: Map<number, Cell>; readonly all: Cell }>();
  const everything = none();
  let taken = 0;
  for (const batch of batches) {
    const own = madeOnce(strata, batch.stratum, () => ({ cells: new Map(), all: none() }));
    const share = batch.share ?? Math.sign(batch.taken);
    const byChance = batch.grafted * share * (1 - share);
    const variance = byChance * spreadOf(batch.grafted, correlation);
    taken += batch.taken;
    for (const cell of [madeOnce(own.cells, batch.group, none), own.all, everything]) {
      cell.grafted += batch.grafted;
      cell.fitted += batch.grafted * share;
      cell.byChance += byChance;
      cell.variance += variance;
    }
  }
  const overall = taken / everything.grafted;
  const sums = groups.map(() => ({
    fitted: 0,
    cells: [] as { part: number; own: Cell; all: Cell }[],
  }));
  for (const { cells, all } of strata.values()) {
    for (const [group, own] of cells) {
      const sum = sums[group] as (typeof sums)[number];
      sum.fitted += own.fitted;
      sum.cells.push({ part: own.grafted / all.grafted, own, all });
    }
  }
  return groups.map(({ comparable, expected, taken: own }, index) => {
    if (comparable === 0 || !(expected > 0)) return null;
    const { fitted, cells } = sums[index] as (typeof sums)[number];
    const ratio = fitted / expected;
    const byAll = (ratio * expected) / (overall * everything.grafted);
    const varianceOf = (what: "byChance" | "variance") => {
      let sum = byAll ** 2 * everything[what];
      for (const { part, own, all } of cells) {
        const others = byAll - ratio * part;
        sum += (others ** 2 - byAll ** 2) * (all[what] - own[what]);
        sum += ((1 + others) ** 2 - byAll ** 2) * own[what];
      }
      return sum * (overall / expected) ** 2;
    };
    const share = Math.min(1 - NEAREST, Math.max(NEAREST, ratio * overall));
    const variance = varianceOf("variance");
    return {
      // A group far above rests on strata with low rates: more than all can't take.
      evenedRate: Math.min(1, (own / expected) * overall),
      trials: (share * (1 - share)) / variance,
      byChance: varianceOf("byChance"),
      variance,
    };
  });
}

interface Cell {
  grafted: number;
  fitted: number;
  byChance: number;
  variance: number;
}

function none(): Cell {
  return { grafted: 0, fitted: 0, byChance: 0, variance: 0 };
}
