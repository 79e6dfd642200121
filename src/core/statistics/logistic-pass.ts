import { add, at, type Matrix, squareMatrix } from "../mathematics";
import type { LogisticRow, LogisticSize } from "./logistic-row";

// Taken from the global once: in a script's own realm every look there costs more than the sum.
/** Rows laid out flat: a fit goes through them many times. */
export interface FlatRows {
  readonly count: number;
  readonly taken: Float64Array;
  readonly grafted: Float64Array;
  readonly base: Int32Array;
  /** Where each row's columns start in `column` and `value`; one more than rows. */
  readonly start: Int32Array;
  readonly column: Int32Array;
  readonly value: Float64Array;
  /** Log likelihood of a fit that meets every row. */
  readonly whole: number;
}

/** Lays rows out. @param rows each with grafted above 0 */
export function flatRows(rows: readonly LogisticRow[]): FlatRows {
  const start = new Int32Array(rows.length + 1);
  rows.forEach((row, index) => {
    start[index + 1] = (start[index] as number) + row.columns.length;
  });
  const column = new Int32Array(start[rows.length] as number);
  const value = new Float64Array(column.length).fill(1);
  rows.forEach(({ columns, values }, index) => {
    column.set(columns, start[index]);
    if (values !== undefined) value.set(values, start[index]);
  });
  return {
    count: rows.length,
    taken: Float64Array.from(rows, (row) => row.taken),
    grafted: Float64Array.from(rows, (row) => row.grafted),
    base: Int32Array.from(rows, (row) => row.base),
    start,
    column,
    value,
    whole: wholeLikelihood(rows),
  };
}

/** Log likelihood of a fit that meets every row; also what separates rows from the batches in them. */
export function wholeLikelihood(
  rows: readonly { readonly taken: number; readonly grafted: number }[],
): number {
  let whole = 0;
  for (const { taken, grafted } of rows) {
    const missed = grafted - taken;
    if (taken > 0) whole += taken * Math.log(taken / grafted);
    if (missed > 0) whole += missed * Math.log(missed / grafted);
  }
  return whole;
}

/** Where a fit stands: what bases and columns add to the log odds. */
export interface LogisticPoint {
  readonly bases: Float64Array;
  readonly coefficients: Float64Array;
}

/** What one way through the rows tells of a point. */
export interface LogisticPass {
  readonly deviance: number;
  /** Information of the columns once the bases are eliminated, with the ridge; lower half. */
  readonly reduced: Matrix;
  readonly columnScore: Float64Array;
  readonly baseScore: Float64Array;
  /** Weight of each base's rows. */
  readonly baseWeight: Float64Array;
  /** For each base the columns that occur in it, rising, with their weight there. */
  readonly shared: readonly (readonly (readonly [column: number, weight: number])[])[];
}

/** A share nearer to 0 or 1 than a double's exp can tell from it stops moving. */
const FARTHEST_LOG_ODDS = 30;

/** The log odds that a point gives a row, kept within 30 on either side. */
export function logOddsOf(flat: FlatRows, row: number, point: LogisticPoint): number {
  let sum = at(point.bases, flat.base[row] as number);
  const end = flat.start[row + 1] as number;
  for (let i = flat.start[row] as number; i < end; i += 1) {
    sum += at(flat.value, i) * at(point.coefficients, flat.column[i] as number);
  }
  return Math.max(-FARTHEST_LOG_ODDS, Math.min(FARTHEST_LOG_ODDS, sum));
}

/**
 * Goes through the rows once: how well a point fits them, and which way is better.
 *
 * Method: deviance, score and information of binomial shares with log odds that add up, as in one
 *   round of iteratively reweighted least squares. The bases' block of the information is diagonal,
 *   so they are eliminated by its Schur complement, and only the columns' block is left to invert.
 * Source: McCullagh, P., Nelder, J. A. (1989). Generalized Linear Models, 2nd ed., sections 2.5
 *   and 4.4 (section numbers from memory); Golub, G. H., Van Loan, C. F. (1996). Matrix
 *   Computations, 3rd ed., section 3.2 (elimination by blocks; citation from memory).
 */
export function passThrough(
  flat: FlatRows,
  point: LogisticPoint,
  size: LogisticSize,
): LogisticPass {
  const { columns } = size;
  const { taken, grafted, base, start, column, value } = flat;
  const reduced = squareMatrix(columns);
  const information = reduced.values;
  const columnScore = point.coefficients.map((one) => -size.ridge * one);
  const baseScore = new Float64Array(size.bases);
  const baseWeight = new Float64Array(size.bases);
  const shared = sharedWeights(size);
  let reached = 0;
  for (let row = 0; row < flat.count; row += 1) {
    const odds = logOddsOf(flat, row, point);
    const share = 1 / (1 + Math.exp(-odds));
    const plants = at(grafted, row);
    const took = at(taken, row);
    // log(1 − share) is −log(1 + e^odds), told from the side that does not cancel.
    const logMissed = odds > 0 ? Math.log(share) - odds : Math.log(1 - share);
    reached += took * odds + plants * logMissed;
    const weight = plants * share * (1 - share);
    const residual = took - plants * share;
    const own = base[row] as number;
    add(baseScore, own, residual);
    add(baseWeight, own, weight);
    const first = start[row] as number;
    const end = start[row + 1] as number;
    for (let i = first; i < end; i += 1) {
      const one = column[i] as number;
      const weighted = at(value, i) * weight;
      add(columnScore, one, at(value, i) * residual);
      shared.add(own, one, weighted);
      for (let j = first; j < end; j += 1) {
        const other = column[j] as number;
        if (other > one) continue;
        add(information, one * columns + other, weighted * at(value, j));
      }
    }
  }
  const entries = shared.entries();
  entries.forEach((list, own) => {
    const weight = at(baseWeight, own);
    if (weight === 0) return;
    for (let i = 0; i < list.length; i += 1) {
      const [one, a] = list[i] as readonly [number, number];
      for (let j = 0; j <= i; j += 1) {
        const [other, b] = list[j] as readonly [number, number];
        add(information, one * columns + other, -(a * b) / weight);
      }
    }
  });
  for (let index = 0; index < columns; index += 1) {
    add(information, index * columns + index, size.ridge);
  }
  const deviance = 2 * (flat.whole - reached);
  return { deviance, reduced, columnScore, baseScore, baseWeight, shared: entries };
}

/** Most numbers that are kept for every base and column, whether they meet or not. */
const DENSE_UP_TO = 1_000_000;

/** The weight of each column in each base: a plain array where that is small, since it is far quicker. */
function sharedWeights({ bases, columns }: LogisticSize) {
  if (bases * columns <= DENSE_UP_TO) {
    const weights = new Float64Array(bases * columns);
    return {
      add: (base: number, column: number, weight: number) => {
        add(weights, base * columns + column, weight);
      },
      entries: () =>
        Array.from({ length: bases }, (_, base) => {
          const own: [number, number][] = [];
          for (let column = 0; column < columns; column += 1) {
            const weight = at(weights, base * columns + column);
            if (weight !== 0) own.push([column, weight]);
          }
          return own;
        }),
    };
  }
  const maps = Array.from({ length: bases }, () => new Map<number, number>());
  return {
    add: (base: number, column: number, weight: number) => {
      const map = maps[base] as Map<number, number>;
      map.set(column, (map.get(column) ?? 0) + weight);
    },
    entries: () => maps.map((map): [number, number][] => [...map].sort(([a], [b]) => a - b)),
  };
}
