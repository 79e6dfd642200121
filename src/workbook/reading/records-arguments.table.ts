// Made by npm run docs; a test holds it equal.

/** Which argument of a function is the records, and which their told columns; from 0. */
export const RECORDS_ARGUMENTS: Readonly<
  Record<string, { readonly records: number; readonly columns: number } | undefined>
> = {
  BATCH_BALANCE: { records: 0, columns: 1 },
  BATCH_CHECK: { records: 0, columns: 3 },
  BATCH_COST: { records: 0, columns: 4 },
  BATCH_DUE: { records: 0, columns: 4 },
  BATCH_LOOKBACK: { records: 0, columns: 5 },
  BATCH_READY: { records: 0, columns: 4 },
  BATCH_STAGES: { records: 0, columns: 4 },
  BATCH_STEPS: { records: 0, columns: 4 },
  ORDER_OUTLOOK: { records: 1, columns: 5 },
  ORDER_PLAN: { records: 5, columns: 6 },
  PLACE_LOAD: { records: 0, columns: 4 },
  TAKE_COMPARED: { records: 0, columns: 4 },
  TAKE_REASONS: { records: 0, columns: 2 },
  TAKE_SUMMARY: { records: 0, columns: 3 },
  TAKE_TREND: { records: 0, columns: 3 },
  WORK_NEEDS: { records: 0, columns: 4 },
  WORK_PLAN: { records: 0, columns: 6 },
};
