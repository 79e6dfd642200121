import { raisedForMany } from "./benjamini-hochberg";
import { type LogisticFit, type LogisticRow, logisticFit, shareOf } from "./logistic-fit";
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
  readonly beside: number | null;
  /** Chance of as much by accident, raised for how many columns were asked; null likewise. */
  readonly aloneByChance: number | null;
  readonly besideByChance: number | null;
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
 * Method: quasi-binomial logistic fits; F tests on deviances with the common fit's heterogeneity
 *   factor, not below 1, equal to R's anova(glm(quasibinomial), test = "F") but for the ridge.
 * Source: McCullagh, P., Nelder, J. A. (1989). Generalized Linear Models, 2nd ed., sections 4.5 and
 *   12.5 (section numbers from memory).
 */
export function reasonsFit(
  batches: readonly ReasonBatch[],
  reasons: readonly ReasonColumn[],
  ridge = RIDGE,
): readonly ReasonResult[] {
  const fitWith = (columns: readonly ReasonColumn[]) => columnFit(batches, columns, ridge);
  const nothing = fitWith([]);
  const common = columnsInCommon(batches.length, reasons);
  const all = fitWith(common);
  const results = reasons.map((column) => {
    const own = tooMany(batches.length, column.levelCount - 1) ? null : fitWith([column]);
    const inCommon = all !== null && common.includes(column) && common.length > 1;
    const without = inCommon ? fitWith(common.filter((one) => one !== column)) : null;
    return {
      column,
      alone: explained(nothing, own),
      beside: inCommon ? explained(without, all) : null,
      aloneChance: byChance(nothing, own),
      besideChance: inCommon ? byChance(without, all) : null,
      rates: ratesOf(batches, column, inCommon ? all : own),
    };
  });
  const alone = raised(results.map(({ aloneChance }) => aloneChance));
  const beside = raised(results.map(({ besideChance }) => besideChance));
  return results.map((one, place) => ({
    alone: one.alone ?? 0,
    beside: one.beside,
    aloneByChance: alone[place] ?? null,
    besideByChance: beside[place] ?? null,
    rates: one.rates,
  }));
}

interface ColumnFit {
  readonly columns: readonly ReasonColumn[];
  readonly rows: readonly LogisticRow[];
  readonly fit: LogisticFit;
  /** Batches less what the fit used up. */
  readonly free: number;
  /** Heterogeneity factor, 1 or more. */
  readonly factor: number;
}

function columnFit(
  batches: readonly ReasonBatch[],
  columns: readonly ReasonColumn[],
  ridge: number,
): ColumnFit | null {
  let width = 0;
  const starts = columns.map(({ levelCount }) => {
    const start = width;
    width += levelCount - 1;
    return start;
  });
  const rows = batches.map(({ taken, grafted }, place): LogisticRow => {
    const own: number[] = [];
    columns.forEach(({ levels }, index) => {
      const level = levels[place] as number;
      if (level > 0) own.push((starts[index] as number) + level - 1);
    });
    return { taken, grafted, base: 0, columns: own };
  });
  const fit = logisticFit(rows, { bases: 1, columns: width, ridge });
  if (fit === null) return null;
  const free = batches.length - 1 - fit.usedColumns;
  const pearson = rows.reduce((sum, { taken, grafted }, place) => {
    const share = fit.shares[place] as number;
    return sum + (taken - grafted * share) ** 2 / (grafted * share * (1 - share));
  }, 0);
  return { columns, rows, fit, free, factor: free <= 0 ? 1 : Math.max(1, pearson / free) };
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
  const before = without.fit.deviance / without.free;
  if (before <= 0) return 0;
  return Math.max(0, 1 - with_.fit.deviance / with_.free / before);
}

function byChance(without: ColumnFit | null, with_: ColumnFit | null): number | null {
  if (without === null || with_ === null || with_.free <= 0) return null;
  const used = without.free - with_.free;
  // Nothing of the column is its own where others always change with it.
  if (used < 0.5) return 1;
  const gain = Math.max(0, without.fit.deviance - with_.fit.deviance);
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
function ratesOf(
  batches: readonly ReasonBatch[],
  column: ReasonColumn,
  from: ColumnFit | null,
): readonly number[] {
  if (from === null) return [];
  const { fit, columns, rows } = from;
  let start = 0;
  for (const one of columns) {
    if (one === column) break;
    start += one.levelCount - 1;
  }
  const effect = (level: number) =>
    level === 0 ? 0 : (fit.coefficients[start + level - 1] as number);
  const grafted = batches.reduce((sum, batch) => sum + batch.grafted, 0);
  const rest = rows.map(({ columns: own }, place) => {
    const all = own.reduce((sum, one) => sum + (fit.coefficients[one] as number), 0);
    return (fit.bases[0] as number) + all - effect(column.levels[place] as number);
  });
  return Array.from({ length: column.levelCount }, (_, level) => {
    const added = effect(level);
    let taken = 0;
    for (let place = 0; place < rest.length; place += 1) {
      taken += (batches[place] as ReasonBatch).grafted * shareOf((rest[place] as number) + added);
    }
    return taken / grafted;
  });
}
