import { madeOnce } from "../made-once";
import { add, at, dot, entry, inverseOf, type Matrix, rowOf, trace } from "../mathematics";
import {
  type FlatRows,
  flatRows,
  type LogisticPass,
  type LogisticPoint,
  logOddsOf,
  passThrough,
} from "./logistic-pass";
import type { LogisticRow, LogisticSize } from "./logistic-row";

// Taken from the global once; see logistic-pass.ts.
export interface LogisticFit {
  /** What each column adds to the log odds. */
  readonly coefficients: Float64Array;
  readonly bases: Float64Array;
  /** The share fitted to each row, in their order. */
  readonly shares: Float64Array;
  readonly deviance: number;
  /** How many columns the fit uses up; those that others make up add nothing where there is a ridge. */
  readonly usedColumns: number;
  /** Variance of a column's coefficient where plants are independent, to be widened by the spread. */
  coefficientVariance(column: number): number;
  /** Variance of a row's log odds where plants are independent, to be widened by the spread. */
  logOddsVariance(row: Pick<LogisticRow, "base" | "columns" | "values">): number;
}

const MOST_ROUNDS = 40;
const MOST_HALVINGS = 12;
/** A fit has settled when a round changes the deviance by less than this part of it. */
const SETTLED = 1e-12;

/**
 * Fits shares by bases and columns that add up in log odds.
 *
 * A base without any taken, or with all taken, has no finite fit: leave such rows out beforehand.
 * A column without any needs a ridge above 0.
 *
 * @param from where to start, as near as is known
 * @returns null when the columns can't be told from one another and there is no ridge
 *
 * Method: iteratively reweighted least squares; the bases are eliminated first, so that hundreds of
 *   strata cost no more than their rows. Without ridge it equals R's glm(family = quasibinomial).
 * Source: McCullagh, P., Nelder, J. A. (1989). Generalized Linear Models, 2nd ed., sections 2.5
 *   and 4.4; le Cessie, S., van Houwelingen, J. C. (1992). Ridge estimators in logistic regression.
 *   Appl. Statist. 41, 191-201 (looked up; section numbers from memory).
 */
export function logisticFit(
  rows: readonly LogisticRow[],
  size: LogisticSize,
  from?: LogisticPoint,
): LogisticFit | null {
  const flat = flatRows(rows);
  let point = from ?? {
    bases: startOfBases(flat, size.bases),
    coefficients: new Float64Array(size.columns),
  };
  let pass = passThrough(flat, point, size);
  let inverse = inverseOf(pass.reduced);
  for (let round = 0; round < MOST_ROUNDS && inverse !== null; round += 1) {
    const step = newtonStep(pass, inverse);
    const before = penalised(pass, point, size);
    let next = moved(point, step, 1);
    let nextPass = passThrough(flat, next, size);
    // A full step may overshoot where shares are near 0 or 1; half of it never does for long.
    for (let halving = 1; halving <= MOST_HALVINGS; halving += 1) {
      if (penalised(nextPass, next, size) <= before + SETTLED * Math.abs(before)) break;
      next = moved(point, step, 0.5 ** halving);
      nextPass = passThrough(flat, next, size);
    }
    const change = Math.abs(before - penalised(nextPass, next, size));
    point = next;
    pass = nextPass;
    inverse = inverseOf(pass.reduced);
    if (change <= SETTLED * (Math.abs(before) + 0.1)) break;
  }
  return inverse === null ? null : finished({ flat, point, pass, inverse, size });
}

function penalised(pass: LogisticPass, { coefficients }: LogisticPoint, { ridge }: LogisticSize) {
  return pass.deviance + ridge * coefficients.reduce((sum, value) => sum + value * value, 0);
}

function moved(point: LogisticPoint, step: LogisticPoint, share: number): LogisticPoint {
  const along = (values: Float64Array, steps: Float64Array) =>
    values.map((value, index) => value + share * at(steps, index));
  return {
    bases: along(point.bases, step.bases),
    coefficients: along(point.coefficients, step.coefficients),
  };
}

function finished({
  flat,
  point,
  pass,
  inverse,
  size,
}: {
  readonly flat: FlatRows;
  readonly point: LogisticPoint;
  readonly pass: LogisticPass;
  readonly inverse: Matrix;
  readonly size: LogisticSize;
}): LogisticFit {
  const ofBase = baseParts(pass, inverse);
  return {
    coefficients: point.coefficients,
    bases: point.bases,
    shares: Float64Array.from({ length: flat.count }, (_, row) =>
      shareOf(logOddsOf(flat, row, point)),
    ),
    deviance: pass.deviance,
    usedColumns: size.columns - size.ridge * trace(inverse),
    coefficientVariance: (column) => entry(inverse, column, column),
    logOddsVariance: ({ base, columns, values }) => {
      const { own, along } = ofBase(base);
      let variance = own;
      for (let i = 0; i < columns.length; i += 1) {
        const one = columns[i] as number;
        const value = values?.[i] ?? 1;
        variance -= 2 * value * at(along, one);
        for (let j = 0; j < columns.length; j += 1) {
          const other = columns[j] as number;
          variance += value * (values?.[j] ?? 1) * entry(inverse, one, other);
        }
      }
      return Math.max(0, variance);
    },
  };
}

function newtonStep(
  { columnScore, baseScore, baseWeight, shared }: LogisticPass,
  inverse: Matrix,
): LogisticPoint {
  const right = Float64Array.from(columnScore);
  shared.forEach((entries, base) => {
    const weight = at(baseWeight, base);
    if (weight === 0) return;
    for (const [column, a] of entries) add(right, column, -(a * at(baseScore, base)) / weight);
  });
  const coefficients = right.map((_, row) => dot(rowOf(inverse, row), right));
  const bases = baseScore.map((score, base) => {
    const weight = at(baseWeight, base);
    if (weight === 0) return 0;
    const taken = (shared[base] ?? []).reduce(
      (sum, [column, a]) => sum + a * at(coefficients, column),
      0,
    );
    return (score - taken) / weight;
  });
  return { bases, coefficients };
}

/** What a base adds to the variance of its rows' log odds, alone and together with each column. */
function baseParts(
  { baseWeight, shared }: LogisticPass,
  inverse: Matrix,
): (base: number) => { readonly own: number; readonly along: Float64Array } {
  const known = new Map<number, { readonly own: number; readonly along: Float64Array }>();
  const partsOf = (base: number) => {
    const weight = at(baseWeight, base);
    const along = new Float64Array(inverse.size);
    if (weight === 0) return { own: 0, along };
    let own = 1 / weight;
    const entries = shared[base] ?? [];
    for (const [column, a] of entries) {
      for (let k = 0; k < inverse.size; k += 1) {
        add(along, k, (a / weight) * entry(inverse, k, column));
      }
    }
    for (const [column, a] of entries) own += (a / weight) * at(along, column);
    return { own, along };
  };
  return (base) => madeOnce(known, base, () => partsOf(base));
}

function startOfBases(flat: FlatRows, bases: number): Float64Array {
  const taken = new Float64Array(bases).fill(0.5);
  const grafted = new Float64Array(bases).fill(1);
  for (let row = 0; row < flat.count; row += 1) {
    const base = flat.base[row] as number;
    add(taken, base, at(flat.taken, row));
    add(grafted, base, at(flat.grafted, row));
  }
  return taken.map((some, base) => Math.log(some / (at(grafted, base) - some)));
}

export function shareOf(logOdds: number): number {
  return 1 / (1 + Math.exp(-logOdds));
}
