import { lazily } from "../lazily";
import { madeOnce } from "../made-once";
import { at, dot, totalOf } from "../mathematics";
import type { ShareMoments } from "./beta-moments";
import { logLikelihoods, type ShareCounts } from "./share-counts";
import { type ShareGrid, shareGrid } from "./share-grid";
import { newBatchShare, SHARE_PRIOR } from "./share-prior";

/** What a nursery's records and the timetable together say of the share kept at a step. */
export interface SharePosterior {
  /** Moments of the share of a new batch; a group that was never recorded is like the others. */
  newBatch(group: string): ShareMoments;
  /** Draws what is unknown once, to be shared by many batches. @param uniform 0 to 1 */
  draw(uniform: () => number): SharedDraw;
}

/** One possible truth. */
export interface SharedDraw {
  /** Mean share of a group, the same at every call. */
  meanOf(group: string): number;
  /** Correlation of the plants within a batch. */
  readonly correlation: number;
}

/** No share is believed to be nearer to all, or to none, than this once plants are counted. */
const MOST_BELIEVED = 0.97;

/**
 * The posterior of a three-level model: batches of a group (a variety) about the group's mean,
 * groups about the nursery's, the nursery's about the timetable's; each level a beta. How far
 * groups and batches differ is learned too, so groups are drawn together by as much as the
 * records say that they are alike.
 *
 * @param groups the counts by group
 * @param timetableMean the timetable's share, 0 to 1
 *
 * Method: hierarchical model of beta-binomial counts (share-counts.ts) under the priors of
 *   share-prior.ts; the posterior by sums over a grid of means and correlations (share-grid.ts), the
 *   means of groups summed out one by one. Its cost grows with the number of groups and the
 *   logarithm of the largest batch, not with the number of batches. The tests hold it against
 *   100,000 nurseries drawn from the prior and weighed by how they explain the counts.
 * Source: Gelman, A., Carlin, J. B., Stern, H. S., Rubin, D. B. (1995). Bayesian Data Analysis,
 *   ch. 5 (hierarchical models, beta-binomial counts of groups on a grid; citation from memory).
 *   The third level, and the least and most that is believed, are ours.
 */
export function sharePosterior(
  groups: ReadonlyMap<string, ShareCounts>,
  timetableMean: number,
): SharePosterior {
  const names = [...groups.keys()].sort();
  if (names.length === 0) return priorOnly(timetableMean);
  // A timetable that knows of no loss is set right by counts that do.
  const grid = shareGrid(Math.min(MOST_BELIEVED, Math.max(1 - MOST_BELIEVED, timetableMean)));
  const likelihoods = names.map((name) => likelihoodTable(groups.get(name) as ShareCounts, grid));
  const cells = cellWeights(grid, likelihoods);
  const tables = new Map(names.map((name, index) => [name, likelihoods[index] ?? null]));
  const tableOf = (group: string) => tables.get(group) ?? null;
  const moments = new Map<string, ShareMoments>();
  return {
    newBatch: (group) => {
      const table = tableOf(group);
      const key = table === null ? "" : group;
      return madeOnce(moments, key, () => momentsOf(grid, cells, table));
    },
    draw: drawFrom({ grid, cells, tableOf }),
  };
}

function priorOnly(mean: number): SharePosterior {
  const moments = newBatchShare(mean);
  if (mean <= 0 || mean >= 1) {
    return { newBatch: () => moments, draw: () => ({ meanOf: () => mean, correlation: 0 }) };
  }
  const drawing = lazily(() => {
    const grid = shareGrid(mean);
    return drawFrom({ grid, cells: cellWeights(grid, []), tableOf: () => null });
  });
  return { newBatch: () => moments, draw: (uniform) => drawing()(uniform) };
}

/** Draws a cell, then each group's mean when it is first asked for. */
function drawFrom({
  grid,
  cells,
  tableOf,
}: {
  readonly grid: ShareGrid;
  readonly cells: CellWeights;
  readonly tableOf: (group: string) => LikelihoodTable | null;
}): SharePosterior["draw"] {
  return (uniform) => {
    const cell = pick(cells.weights, cells.total, uniform());
    const drawn = new Map<string, number>();
    return {
      correlation: pointOfCell(cell, grid).batchSpread.value,
      meanOf: (group) =>
        madeOnce(drawn, group, () =>
          drawMean(grid, cell, { table: tableOf(group), chance: uniform() }),
        ),
    };
  };
}

/** [batch spread] → likelihood of each group mean, the largest of the table being 1. */
type LikelihoodTable = readonly Float64Array[];

function likelihoodTable(counts: ShareCounts, { means }: ShareGrid): LikelihoodTable {
  const logs = SHARE_PRIOR.batches.values.map((spread) => logLikelihoods(counts, means, spread));
  const largest = logs.reduce(
    (most, row) => row.reduce((best, value) => Math.max(best, value), most),
    Number.NEGATIVE_INFINITY,
  );
  return logs.map((row) => row.map((value) => Math.exp(value - largest)));
}

interface CellWeights {
  /** One weight a cell (batch spread, group spread, nursery mean), in that nesting. */
  readonly weights: Float64Array;
  readonly total: number;
}

function cellWeights(grid: ShareGrid, likelihoods: readonly LikelihoodTable[]): CellWeights {
  const { batchWeights, groupWeights, nurseryWeights, groupMeans } = grid;
  const logs = new Float64Array(batchWeights.length * groupWeights.length * nurseryWeights.length);
  const logOfNursery = nurseryWeights.map(Math.log);
  let cell = 0;
  let largest = Number.NEGATIVE_INFINITY;
  for (let batch = 0; batch < batchWeights.length; batch += 1) {
    const rows = likelihoods.map((table) => table[batch] as Float64Array);
    for (let group = 0; group < groupWeights.length; group += 1) {
      const prior = Math.log((batchWeights[batch] as number) * (groupWeights[group] as number));
      for (let nursery = 0; nursery < nurseryWeights.length; nursery += 1) {
        const among = groupMeans[group]?.[nursery] as Float64Array;
        let weight = prior + at(logOfNursery, nursery);
        for (const row of rows) weight += Math.log(dot(among, row));
        logs[cell] = weight;
        if (weight > largest) largest = weight;
        cell += 1;
      }
    }
  }
  const weights = logs.map((log) => Math.exp(log - largest));
  return { weights, total: totalOf(weights) };
}

function pointOfCell(cell: number, { groupWeights, nurseryWeights }: ShareGrid) {
  const nurseries = nurseryWeights.length;
  const nursery = cell % nurseries;
  const group = Math.floor(cell / nurseries) % groupWeights.length;
  const batch = Math.floor(cell / (nurseries * groupWeights.length));
  return {
    nursery,
    group,
    batchSpread: { index: batch, value: SHARE_PRIOR.batches.values[batch] as number },
  };
}

function momentsOf(
  grid: ShareGrid,
  { weights, total }: CellWeights,
  table: LikelihoodTable | null,
) {
  let mean = 0;
  let meanSquare = 0;
  weights.forEach((weight, cell) => {
    // A cell of no weight to speak of costs as much as another.
    if (weight < total * 1e-9) return;
    const { nursery, group, batchSpread } = pointOfCell(cell, grid);
    const among = grid.groupMeans[group]?.[nursery] as Float64Array;
    const likelihood = table?.[batchSpread.index];
    let all = 0;
    let first = 0;
    let second = 0;
    for (let i = 0; i < among.length; i += 1) {
      const chance = at(among, i) * (likelihood === undefined ? 1 : at(likelihood, i));
      const x = at(grid.means, i);
      all += chance;
      first += chance * x;
      second += chance * (x * x + x * (1 - x) * batchSpread.value);
    }
    if (all === 0) return;
    mean += (weight * first) / all;
    meanSquare += (weight * second) / all;
  });
  return { mean: mean / total, meanSquare: meanSquare / total };
}

function drawMean(
  grid: ShareGrid,
  cell: number,
  { table, chance }: { readonly table: LikelihoodTable | null; readonly chance: number },
): number {
  const { nursery, group, batchSpread } = pointOfCell(cell, grid);
  const among = grid.groupMeans[group]?.[nursery] as Float64Array;
  const likelihood = table?.[batchSpread.index] ?? null;
  if (likelihood === null) return at(grid.means, pick(among, 1, chance));
  let left = chance * dot(among, likelihood);
  for (let i = 0; i < among.length; i += 1) {
    left -= at(among, i) * at(likelihood, i);
    if (left < 0) return at(grid.means, i);
  }
  return at(grid.means, among.length - 1);
}

/** The first index at which the weights so far reach the chance. */
function pick(weights: Float64Array, total: number, chance: number): number {
  let left = chance * total;
  for (let i = 0; i < weights.length; i += 1) {
    left -= at(weights, i);
    if (left < 0) return i;
  }
  return weights.length - 1;
}
