import { madeOnce } from "../made-once";
import { type FittedBatch, spreadOf } from "./batch-correlation";
import type { ComparedBatch } from "./evened-groups";
import { logisticFit } from "./logistic-fit";
import type { LogisticRow } from "./logistic-row";

/** More groups than this are not fitted one by one: what they differ by counts as batches differing. */
const MOST_GROUPS = 300;
/** Too weak to be seen in a fit that the batches carry; keeps a group without any takes finite. */
const RIDGE = 0.01;

/**
 * Batches of strata in which some plants took and some did not: the others say nothing of how much
 * batches differ.
 */
export function tellingBatches(batches: readonly ComparedBatch[]): readonly ComparedBatch[] {
  const sums = new Map<number, { taken: number; grafted: number }>();
  for (const { stratum, taken, grafted } of batches) {
    const sum = madeOnce(sums, stratum, () => ({ taken: 0, grafted: 0 }));
    sum.taken += taken;
    sum.grafted += grafted;
  }
  return batches.filter(({ stratum }) => {
    const { taken, grafted } = sums.get(stratum) as { taken: number; grafted: number };
    return taken > 0 && taken < grafted;
  });
}

/**
 * Each batch beside what its group and its stratum, added up in log odds, make expected of it.
 *
 * @param telling     see tellingBatches
 * @param correlation of the plants of a batch, by which batches weigh what they say
 *
 * Method: logistic fit of groups and strata, see logistic-fit.ts, with a ridge too weak to be seen and
 *   Williams' weights; a batch's leverage is the part of its own weight in the variance of its fit.
 * Source: Williams, D. A. (1982). Appl. Statist. 31, 144-148, model II; Pregibon, D. (1981). Logistic regression diagnostics. Ann. Statist. 9, 705-724 (leverage;
 *   citation looked up).
 */
export function additiveFit(
  telling: readonly ComparedBatch[],
  groupCount: number,
  correlation: number,
): readonly FittedBatch[] {
  const baseOf = new Map([...new Set(telling.map(({ stratum }) => stratum))].map((s, i) => [s, i]));
  const fitted = groupCount <= MOST_GROUPS;
  const cells = new Map<number, LogisticRow & { taken: number; grafted: number }>();
  const cellOf = ({ group, stratum }: ComparedBatch) =>
    (baseOf.get(stratum) as number) * (groupCount + 1) + group;
  for (const batch of telling) {
    const cell = madeOnce(cells, cellOf(batch), () => ({
      taken: 0,
      grafted: 0,
      base: baseOf.get(batch.stratum) as number,
      // The first group is what the others are told by.
      columns: fitted && batch.group > 0 ? [batch.group - 1] : [],
    }));
    const weight = 1 / spreadOf(batch.grafted, correlation);
    cell.taken += weight * batch.taken;
    cell.grafted += weight * batch.grafted;
  }
  const rows = [...cells.values()];
  const columns = fitted ? Math.max(0, groupCount - 1) : 0;
  const fit = logisticFit(rows, { bases: baseOf.size, columns, ridge: RIDGE });
  if (fit === null) throw new Error("a fit with a ridge has an answer");
  const ofCell = new Map(
    [...cells].map(([key, row], index) => {
      const share = fit.shares[index] as number;
      return [key, { share, perPlant: share * (1 - share) * fit.logOddsVariance(row) }];
    }),
  );
  return telling.map((batch) => {
    const { share, perPlant } = ofCell.get(cellOf(batch)) as { share: number; perPlant: number };
    return {
      taken: batch.taken,
      grafted: batch.grafted,
      share,
      leverage: Math.min(1, (batch.grafted * perPlant) / spreadOf(batch.grafted, correlation)),
    };
  });
}
