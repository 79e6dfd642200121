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

export interface LogisticSize {
  readonly bases: number;
  readonly columns: number;
  /** Pull of each column's coefficient toward 0, as the inverse of a variance; 0 for none. */
  readonly ridge: number;
}
