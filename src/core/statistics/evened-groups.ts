import { madeOnce } from "../made-once";
/** A batch, its group (what is compared) and its stratum (what it is evened for), each from 0. */
export interface ComparedBatch {
  readonly group: number;
  readonly stratum: number;
  /** Above 0. */
  readonly grafted: number;
  /** 0 to grafted. */
  readonly taken: number;
}

export interface EvenedGroup {
  readonly batches: number;
  readonly grafted: number;
  readonly taken: number;
  /** Takes that the group would have at the rates of its strata, all groups together. */
  readonly expected: number;
  /** Variance of taken − expected, by chance alone and widened by how much batches differ. */
  readonly byChance: number;
  readonly variance: number;
  /** Batches in strata that other groups have too. */
  readonly comparable: number;
  /** Batches of other groups in those strata. */
  readonly others: number;
  /** Strata in which the group stands alone. */
  readonly alone: readonly number[];
}

/**
 * Each group against the rest, over strata.
 *
 * @param spreadOf how many times more than chance the takes of a batch of so many grafts vary;
 *   left out, no more, which is the plain test
 *
 * Method: the score statistic of Mantel and Haenszel; (taken − expected)² ÷ variance equals R's
 *   mantelhaen.test(correct = FALSE) where batches vary no more than chance.
 * Source: Mantel, N., Haenszel, W. (1959). Statistical aspects of the analysis of data from
 *   retrospective studies of disease. J. Nat. Cancer Inst. 22, 719-748 (citation looked up).
 */
export function evenedGroups(
  batches: readonly ComparedBatch[],
  groupCount: number,
  spreadOf: (grafted: number) => number = () => 1,
): readonly EvenedGroup[] {
  const groups = Array.from({ length: groupCount }, () => ({
    batches: 0,
    grafted: 0,
    taken: 0,
    expected: 0,
    byChance: 0,
    variance: 0,
    comparable: 0,
    others: 0,
    alone: [] as number[],
  }));
  for (const [stratum, { cells, total }] of strataOf(batches, spreadOf)) {
    const rate = total.taken / total.grafted;
    // Plants are drawn without putting back, as in the plain test.
    const perPlant =
      total.grafted > 1 ? (rate * (1 - rate) * total.grafted) / (total.grafted - 1) : 0;
    for (const [index, cell] of cells) {
      const group = groups[index] as (typeof groups)[number];
      const part = cell.grafted / total.grafted;
      group.batches += cell.batches;
      group.grafted += cell.grafted;
      group.taken += cell.taken;
      group.expected += cell.grafted * rate;
      if (cells.size === 1) {
        group.alone.push(stratum);
        continue;
      }
      group.comparable += cell.batches;
      group.others += total.batches - cell.batches;
      const widened = (own: number, all: number) =>
        perPlant * ((1 - part) ** 2 * own + part ** 2 * (all - own));
      group.byChance += widened(cell.grafted, total.grafted);
      group.variance += widened(cell.spread, total.spread);
    }
  }
  return groups;
}

interface Sum {
  batches: number;
  grafted: number;
  taken: number;
  /** Σ grafted × spread. */
  spread: number;
}

interface Stratum {
  readonly cells: Map<number, Sum>;
  readonly total: Sum;
}

function strataOf(
  batches: readonly ComparedBatch[],
  spreadOf: (grafted: number) => number,
): ReadonlyMap<number, Stratum> {
  const strata = new Map<number, Stratum>();
  for (const { group, stratum, grafted, taken } of batches) {
    const own = madeOnce(strata, stratum, () => ({ cells: new Map(), total: none() }));
    const cell = madeOnce(own.cells, group, none);
    for (const sum of [cell, own.total]) {
      sum.batches += 1;
      sum.grafted += grafted;
      sum.taken += taken;
      sum.spread += grafted * spreadOf(grafted);
    }
  }
  return strata;
}

function none(): Sum {
  return { batches: 0, grafted: 0, taken: 0, spread: 0 };
}
