import { inverseOf } from "./cholesky";

/** A batch, or batches that are alike in every column, as a fit sees them. */
export interface LogisticRow {
  /** 0 to grafted. */
  readonly taken: number;
  /** Above 0. */
  readonly grafted: number;
  /** Which base the row starts from, from 0: a stratum, or 0 where there is one base for all. */
  readonly base: number;
  /** Columns that add to the base, from 0, each at most once. */
  readonly columns: readonly number[];
  /** By how much each of them counts; 1 each where not given. */
  readonly values?: readonly number[];
}

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

export interface LogisticSize {
  readonly bases: number;
  readonly columns: number;
  /** Pull of each column's coefficient toward 0, as the inverse of a variance; 0 for none. */
  readonly ridge: number;
}

const MOST_ROUNDS = 40;
const FARTHEST_LOG_ODDS = 30;

/**
 * Fits shares by bases and columns that add up in log odds.
 *
 * A base without any taken, or with all taken, has no finite fit: leave such rows out beforehand.
 * A column without any needs a ridge above 0.
 *
 * @returns null when the columns can't be told from one another and there is no ridge
 *
 * Method: iteratively reweighted least squares; the bases are eliminated first, so that hundreds of
 *   strata cost no more than their rows. Without ridge it equals R's glm(family = quasibinomial).
 * Source: McCullagh, P., Nelder, J. A. (1989). Generalized Linear Models, 2nd ed., sections 2.5
 *   and 4.4; le Cessie, S., van Houwelingen, J. C. (1992). Ridge estimators in logistic regression.
 *   Appl. Statist. 41, 191-201 (citations from memory).
 */
export function logisticFit(rows: readonly LogisticRow[], size: LogisticSize): LogisticFit | null {
  const coefficients = new Float64Array(size.columns);
  const bases = startOfBases(rows, size.bases);
  let penalised = penalisedDeviance(rows, bases, coefficients, size.ridge);
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const system = normalEquations(rows, bases, coefficients, size);
    const inverse = inverseOf(system.reduced, size.columns);
    if (inverse === null) return null;
    const { columnStep, baseStep } = newtonStep(system, inverse, size);
    let share = 1;
    let next = penalised;
    let movedBases = bases;
    let moved = coefficients;
    // A full step may overshoot where shares are near 0 or 1; half of it never does for long.
    for (let halving = 0; halving < 12; halving += 1) {
      moved = coefficients.map((value, place) => value + share * (columnStep[place] as number));
      movedBases = bases.map((value, place) => value + share * (baseStep[place] as number));
      next = penalisedDeviance(rows, movedBases, moved, size.ridge);
      if (next <= penalised + 1e-12 * Math.abs(penalised)) break;
      share /= 2;
    }
    coefficients.set(moved);
    bases.set(movedBases);
    const settled = Math.abs(penalised - next) <= 1e-13 * (Math.abs(next) + 0.1);
    penalised = next;
    if (settled) break;
  }
  return finished(rows, bases, coefficients, size);
}

function finished(
  rows: readonly LogisticRow[],
  bases: Float64Array,
  coefficients: Float64Array,
  size: LogisticSize,
): LogisticFit | null {
  const system = normalEquations(rows, bases, coefficients, size);
  const inverse = inverseOf(system.reduced, size.columns);
  if (inverse === null) return null;
  const ofBase = baseParts(system, inverse, size);
  return {
    coefficients,
    bases,
    shares: Float64Array.from(rows, (row) => shareOf(logOdds(row, bases, coefficients))),
    deviance: devianceOf(rows, bases, coefficients),
    usedColumns: size.columns - size.ridge * trace(inverse, size.columns),
    coefficientVariance: (column) => inverse[column * size.columns + column] as number,
    logOddsVariance: ({ base, columns, values }) => {
      const { own, along } = ofBase(base);
      let variance = own;
      for (let i = 0; i < columns.length; i += 1) {
        const one = columns[i] as number;
        const value = values?.[i] ?? 1;
        variance -= 2 * value * (along[one] as number);
        for (let j = 0; j < columns.length; j += 1) {
          const other = columns[j] as number;
          variance += value * (values?.[j] ?? 1) * (inverse[one * size.columns + other] as number);
        }
      }
      return Math.max(0, variance);
    },
  };
}

function trace(matrix: Float64Array, size: number): number {
  let sum = 0;
  for (let place = 0; place < size; place += 1) sum += matrix[place * size + place] as number;
  return sum;
}

interface NormalEquations {
  /** Information of the columns once the bases are eliminated, with the ridge. */
  readonly reduced: Float64Array;
  readonly columnScore: Float64Array;
  readonly baseScore: Float64Array;
  /** Weight of each base's rows. */
  readonly baseWeight: Float64Array;
  /** For each base the columns that occur in it, with their weight there. */
  readonly shared: readonly (readonly [column: number, weight: number][])[];
}

function normalEquations(
  rows: readonly LogisticRow[],
  bases: Float64Array,
  coefficients: Float64Array,
  size: LogisticSize,
): NormalEquations {
  const { columns } = size;
  const reduced = new Float64Array(columns * columns);
  const columnScore = coefficients.map((value) => -size.ridge * value);
  const baseScore = new Float64Array(size.bases);
  const baseWeight = new Float64Array(size.bases);
  const shared = sharedWeights(size);
  for (const row of rows) {
    const share = shareOf(logOdds(row, bases, coefficients));
    const weight = row.grafted * share * (1 - share);
    const residual = row.taken - row.grafted * share;
    add(baseScore, row.base, residual);
    add(baseWeight, row.base, weight);
    for (let i = 0; i < row.columns.length; i += 1) {
      const one = row.columns[i] as number;
      const value = row.values?.[i] ?? 1;
      add(columnScore, one, value * residual);
      shared.add(row.base, one, value * weight);
      for (let j = 0; j < row.columns.length; j += 1) {
        const other = row.columns[j] as number;
        add(reduced, one * columns + other, value * (row.values?.[j] ?? 1) * weight);
      }
    }
  }
  const entriesOf = shared.entries();
  entriesOf.forEach((entries, base) => {
    const weight = baseWeight[base] as number;
    if (weight === 0) return;
    for (const [one, a] of entries) {
      for (const [other, b] of entries) add(reduced, one * columns + other, (-a * b) / weight);
    }
  });
  for (let place = 0; place < columns; place += 1)
    add(reduced, place * columns + place, size.ridge);
  return { reduced, columnScore, baseScore, baseWeight, shared: entriesOf };
}

/** Most numbers that are kept for every base and column, whether they meet or not. */
const DENSE_UP_TO = 1_000_000;

/** The weight of each column in each base: a plain array where that is small, since it is far quicker. */
function sharedWeights({ bases, columns }: LogisticSize) {
  if (bases * columns <= DENSE_UP_TO) {
    const weights = new Float64Array(bases * columns);
    return {
      add: (base: number, column: number, weight: number) =>
        add(weights, base * columns + column, weight),
      entries: () =>
        Array.from({ length: bases }, (_, base) => {
          const own: [number, number][] = [];
          for (let column = 0; column < columns; column += 1) {
            const weight = weights[base * columns + column] as number;
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
    entries: () => maps.map((map): [number, number][] => [...map]),
  };
}

function newtonStep(system: NormalEquations, inverse: Float64Array, { columns }: LogisticSize) {
  const { columnScore, baseScore, baseWeight, shared } = system;
  const right = Float64Array.from(columnScore);
  shared.forEach((entries, base) => {
    const weight = baseWeight[base] as number;
    if (weight === 0) return;
    for (const [column, a] of entries)
      add(right, column, (-a * (baseScore[base] as number)) / weight);
  });
  const columnStep = Float64Array.from(right, (_, row) => {
    let sum = 0;
    for (let k = 0; k < columns; k += 1) {
      sum += (inverse[row * columns + k] as number) * (right[k] as number);
    }
    return sum;
  });
  const baseStep = Float64Array.from(baseScore, (score, base) => {
    const weight = baseWeight[base] as number;
    if (weight === 0) return 0;
    const taken = (shared[base] ?? []).reduce(
      (sum, [column, a]) => sum + a * (columnStep[column] as number),
      0,
    );
    return (score - taken) / weight;
  });
  return { columnStep, baseStep };
}

/** What a base adds to the variance of its rows' log odds, alone and together with each column. */
function baseParts(
  { baseWeight, shared }: NormalEquations,
  inverse: Float64Array,
  { columns }: LogisticSize,
): (base: number) => { readonly own: number; readonly along: Float64Array } {
  const known = new Map<number, { own: number; along: Float64Array }>();
  return (base) => {
    let parts = known.get(base);
    if (parts !== undefined) return parts;
    const weight = baseWeight[base] as number;
    const along = new Float64Array(columns);
    let own = weight === 0 ? 0 : 1 / weight;
    if (weight !== 0) {
      const entries = shared[base] ?? [];
      for (const [column, a] of entries) {
        for (let k = 0; k < columns; k += 1) {
          add(along, k, (a / weight) * (inverse[k * columns + column] as number));
        }
      }
      for (const [column, a] of entries) own += (a / weight) * (along[column] as number);
    }
    parts = { own, along };
    known.set(base, parts);
    return parts;
  };
}

function startOfBases(rows: readonly LogisticRow[], bases: number): Float64Array {
  const taken = new Float64Array(bases).fill(0.5);
  const grafted = new Float64Array(bases).fill(1);
  for (const row of rows) {
    add(taken, row.base, row.taken);
    add(grafted, row.base, row.grafted);
  }
  return taken.map((some, base) => Math.log(some / ((grafted[base] as number) - some)));
}

function logOdds(row: LogisticRow, bases: Float64Array, coefficients: Float64Array): number {
  let sum = bases[row.base] as number;
  for (let i = 0; i < row.columns.length; i += 1) {
    sum += (row.values?.[i] ?? 1) * (coefficients[row.columns[i] as number] as number);
  }
  return Math.max(-FARTHEST_LOG_ODDS, Math.min(FARTHEST_LOG_ODDS, sum));
}

export function shareOf(oddsLog: number): number {
  return 1 / (1 + Math.exp(-oddsLog));
}

function penalisedDeviance(
  rows: readonly LogisticRow[],
  bases: Float64Array,
  coefficients: Float64Array,
  ridge: number,
): number {
  const squares = coefficients.reduce((sum, value) => sum + value * value, 0);
  return devianceOf(rows, bases, coefficients) + ridge * squares;
}

function devianceOf(
  rows: readonly LogisticRow[],
  bases: Float64Array,
  coefficients: Float64Array,
): number {
  let sum = 0;
  for (const row of rows) {
    const share = shareOf(logOdds(row, bases, coefficients));
    const missed = row.grafted - row.taken;
    if (row.taken > 0) sum += row.taken * Math.log(row.taken / (row.grafted * share));
    if (missed > 0) sum += missed * Math.log(missed / (row.grafted * (1 - share)));
  }
  return 2 * sum;
}

function add(values: Float64Array, place: number, amount: number): void {
  values[place] = (values[place] as number) + amount;
}
