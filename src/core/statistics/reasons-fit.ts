/* Longer than most: the fits, their weights and what is read from them are one method, and share their rows. */
import { madeOnce } from "../made-once";
import { totalOf } from "../mathematics";
import {
  batchCorrelation,
  type FittedBatch,
  ROUNDS,
  spreadOf,
  USUAL_CORRELATION,
} from "./batch-correlation";
import { raisedForMany } from "./benjamini-hochberg";
import { type LogisticFit, logisticFit, shareOf } from "./logistic-fit";
import { wholeLikelihood } from "./logistic-pass";
import type { LogisticRow } from "./logistic-row";
import { beyondF } from "./t-and-f-tails";

/** A column whose levels may go with takes. */
export interface ReasonColumn {
  /** The level of each batch, from 0; level 0 is what the others are told by. */
  readonly levels: readonly number[];
  readonly levelCount: number;
}

export interface ReasonResult {
  /** Share of the spread between batches that the column goes with, on its own, 0 to 1. */
  readonly alone: number;
  /** What is left of it once the other columns have had theirs; null when too few batches to ask. */
  readonly besideOthers: number | null;
  /** Chance of as much by accident, raised for how many columns were asked; null likewise. */
  readonly aloneByChance: number | null;
  readonly besideOthersByChance: number | null;
  /** Take rate of each level with everything else as it is over all batches, 0 to 1. */
  readonly rates: readonly number[];
}

export interface ReasonBatch {
  readonly taken: number;
  /** Above 0. */
  readonly grafted: number;
}

/** Too weak to be seen in a fit that the batches carry; keeps levels without any takes finite. */
const RIDGE = 0.01;
/** Batches for each coefficient that a fit must have (our choice). */
const BATCHES_A_COLUMN = 4;

/**
 * How much of the spread between batches each column goes with, on its own and beside the others.
 *
 * Share of the spread: 1 − (deviance ÷ free batches) with the column over the same without it, not
 * below 0, so that a column of many levels gains nothing by their number. Columns with the most
 * levels stay out of the common fit where there are too few batches for all.
 *
 * Method: logistic fits in which batches weigh by the correlation of their plants (README.md here); F tests on deviances with the common fit's heterogeneity
 *   factor, not below 1, equal to R's anova(glm(quasibinomial), test = "F") but for the ridge.
 * Source: Williams, D. A. (1982). Appl. Statist. 31, 144-148, model II (weights; citation looked up);
 *   McCullagh, P., Nelder, J. A. (1989). Generalized Linear Models, 2nd ed., sections 4.5
 *   (looked up) and 12.5 (from memory).
 */
export function reasonsFit(
  counted: readonly ReasonBatch[],
  reasons: readonly ReasonColumn[],
  { ridge = RIDGE, correlation }: ReasonsOptions = {},
): readonly ReasonResult[] {
  const common = columnsInCommon(counted.length, reasons);
  const batches = weighed(counted, correlation ?? correlationBeside(counted, common, ridge));
  const fitWith = (columns: readonly ReasonColumn[], near?: ColumnFit | null) =>
    columnFit(batches, columns, { ridge, near: near ?? null });
  const nothing = fitWith([]);
  const all = fitWith(common);
  const results = reasons.map((column) => {
    const own = tooMany(batches.length, column.levelCount - 1) ? null : fitWith([column]);
    const inCommon = all !== null && common.includes(column) && common.length > 1;
    const without = inCommon
      ? fitWith(
          common.filter((one) => one !== column),
          all,
        )
      : null;
    return {
      column,
      alone: explained(nothing, own),
      besideOthers: inCommon ? explained(without, all) : null,
      aloneChance: byChance(nothing, own),
      besideOthersChance: inCommon ? byChance(without, all) : null,
      rates: ratesOf(column, inCommon ? all : own),
    };
  });
  const alone = raised(results.map(({ aloneChance }) => aloneChance));
  const besideOthers = raised(results.map(({ besideOthersChance }) => besideOthersChance));
  return results.map((one, index) => ({
    alone: one.alone ?? 0,
    besideOthers: one.besideOthers,
    aloneByChance: alone[index] ?? null,
    besideOthersByChance: besideOthers[index] ?? null,
    rates: one.rates,
  }));
}

export interface ReasonsOptions {
  /** Pull of coefficients toward 0. */
  readonly ridge?: number;
  /** Of the plants of a batch; learned from the batches where not given. */
  readonly correlation?: number;
}

/** Batches with as many plants as they are worth where the plants of a batch are alike. */
function weighed(batches: readonly ReasonBatch[], correlation: number): readonly ReasonBatch[] {
  return batches.map(({ taken, grafted }) => {
    const weight = 1 / spreadOf(grafted, correlation);
    return { taken: weight * taken, grafted: weight * grafted };
  });
}

/** The correlation that is left beside the columns of the common fit. */
function correlationBeside(
  batches: readonly ReasonBatch[],
  common: readonly ReasonColumn[],
  ridge: number,
): number {
  let correlation = USUAL_CORRELATION;
  for (let round = 0; round < ROUNDS; round += 1) {
    const worth = weighed(batches, correlation);
    const found = columnFit(worth, common, { ridge, near: null });
    if (found === null) return correlation;
    const { fit, rows, rowOf } = found;
    const beside = batches.map((batch, index): FittedBatch => {
      const row = rowOf[index] as number;
      const share = fit.shares[row] as number;
      const own = (worth[index] as ReasonBatch).grafted * share * (1 - share);
      const leverage = own * fit.logOddsVariance(rows[row] as LogisticRow);
      return {
        taken: batch.taken,
        grafted: batch.grafted,
        share,
        leverage: Math.min(1, leverage),
      };
    });
    correlation = batchCorrelation(
      // Where all or none is fitted, nothing can differ.
      beside.filter(({ share }) => share > NEAREST && share < 1 - NEAREST),
    ).correlation;
  }
  return correlation;
}

const NEAREST = 1e-9;

interface ColumnFit {
  readonly columns: readonly ReasonColumn[];
  /** Batches alike in every column are one row. */
  readonly rows: readonly LogisticRow[];
  /** The row of each batch. */
  readonly rowOf: Int32Array;
  readonly fit: LogisticFit;
  /** Of the batches. */
  readonly deviance: number;
  /** Batches less what the fit used up. */
  readonly free: number;
  /** Heterogeneity factor, 1 or more. */
  readonly factor: number;
}

function columnFit(
  batches: readonly ReasonBatch[],
  columns: readonly ReasonColumn[],
  { ridge, near }: { readonly ridge: number; readonly near: ColumnFit | null },
): ColumnFit | null {
  const width = columns.reduce((sum, { levelCount }) => sum + levelCount - 1, 0);
  const { rows, rowOf } = alike(batches, columns);
  const start = near === null ? undefined : startFrom(near, columns);
  const fit = logisticFit(rows, { bases: 1, columns: width, ridge }, start);
  if (fit === null) return null;
  const free = batches.length - 1 - fit.usedColumns;
  let pearson = 0;
  batches.forEach(({ taken, grafted }, index) => {
    const share = fit.shares[rowOf[index] as number] as number;
    pearson += (taken - grafted * share) ** 2 / (grafted * share * (1 - share));
  });
  return {
    columns,
    rows,
    rowOf,
    fit,
    deviance: fit.deviance + 2 * (wholeLikelihood(batches) - wholeLikelihood(rows)),
    free,
    factor: free <= 0 ? 1 : Math.max(1, pearson / free),
  };
}

/** Batches put together where they are alike in every column. */
function alike(batches: readonly ReasonBatch[], columns: readonly ReasonColumn[]) {
  const starts = columns.map((_, index) =>
    columns.slice(0, index).reduce((sum, { levelCount }) => sum + levelCount - 1, 0),
  );
  const rows: (LogisticRow & { taken: number; grafted: number })[] = [];
  const rowOf = new Int32Array(batches.length);
  const rowByKey = new Map<string | number, number>();
  const combinations = columns.reduce((all, { levelCount }) => all * levelCount, 1);
  batches.forEach(({ taken, grafted }, batch) => {
    let mixed = 0;
    for (const { levels, levelCount } of columns) mixed = mixed * levelCount + (levels[batch] ?? 0);
    // Beyond whole numbers that a double can tell apart, by text.
    const key =
      combinations < Number.MAX_SAFE_INTEGER
        ? mixed
        : columns.map(({ levels }) => levels[batch]).join(" ");
    const rowIndex = madeOnce(rowByKey, key, () => {
      const own: number[] = [];
      columns.forEach(({ levels }, index) => {
        const level = levels[batch] as number;
        if (level > 0) own.push((starts[index] as number) + level - 1);
      });
      return rows.push({ taken: 0, grafted: 0, base: 0, columns: own }) - 1;
    });
    const row = rows[rowIndex] as (typeof rows)[number];
    row.taken += taken;
    row.grafted += grafted;
    rowOf[batch] = rowIndex;
  });
  return { rows, rowOf };
}

/** A fit of fewer columns starts where that of more ended. */
function startFrom({ columns: all, fit }: ColumnFit, columns: readonly ReasonColumn[]) {
  const kept: number[] = [];
  let at = 0;
  for (const column of all) {
    const end = at + column.levelCount - 1;
    if (columns.includes(column)) kept.push(...fit.coefficients.subarray(at, end));
    at = end;
  }
  return { bases: Float64Array.from(fit.bases), coefficients: Float64Array.from(kept) };
}

function tooMany(batches: number, coefficients: number): boolean {
  return batches < BATCHES_A_COLUMN * (coefficients + 1);
}

/** Columns for the common fit, those of few levels first, as far as the batches carry them. */
function columnsInCommon(
  batches: number,
  reasons: readonly ReasonColumn[],
): readonly ReasonColumn[] {
  let coefficients = 0;
  const chosen = new Set<ReasonColumn>();
  for (const column of [...reasons].sort((a, b) => a.levelCount - b.levelCount)) {
    if (tooMany(batches, coefficients + column.levelCount - 1)) break;
    coefficients += column.levelCount - 1;
    chosen.add(column);
  }
  return reasons.filter((column) => chosen.has(column));
}

function explained(without: ColumnFit | null, with_: ColumnFit | null): number | null {
  if (without === null || with_ === null || without.free <= 0 || with_.free <= 0) return null;
  const before = without.deviance / without.free;
  if (before <= 0) return 0;
  return Math.max(0, 1 - with_.deviance / with_.free / before);
}

function byChance(without: ColumnFit | null, with_: ColumnFit | null): number | null {
  if (without === null || with_ === null || with_.free <= 0) return null;
  const used = without.free - with_.free;
  // Nothing of the column is its own where others always change with it.
  if (used < 0.5) return 1;
  const gain = Math.max(0, without.deviance - with_.deviance);
  return beyondF(gain / used / with_.factor, used, with_.free);
}

function raised(chances: readonly (number | null)[]): readonly (number | null)[] {
  const known = chances.filter((one) => one !== null);
  const up = raisedForMany(known);
  let next = 0;
  return chances.map((one) => {
    if (one === null) return null;
    next += 1;
    return up[next - 1] as number;
  });
}

/** The take rate of all batches, had they all been of one level. */
function ratesOf(column: ReasonColumn, from: ColumnFit | null): readonly number[] {
  if (from === null) return [];
  const { fit, columns, rows } = from;
  let start = 0;
  for (const one of columns) {
    if (one === column) break;
    start += one.levelCount - 1;
  }
  const effects = Array.from({ length: column.levelCount }, (_, level) =>
    level === 0 ? 0 : (fit.coefficients[start + level - 1] as number),
  );
  const rest = rows.map(({ columns: own }) =>
    own
      .filter((one) => one < start || one >= start + column.levelCount - 1)
      .reduce((sum, one) => sum + (fit.coefficients[one] as number), fit.bases[0] as number),
  );
  const all = totalOf(rows.map(({ grafted }) => grafted));
  return effects.map((effect) => {
    let taken = 0;
    for (let row = 0; row < rest.length; row += 1) {
      taken += (rows[row] as LogisticRow).grafted * shareOf((rest[row] as number) + effect);
    }
    return taken / all;
  });
}
