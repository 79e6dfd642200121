// Made by npm run docs; a test holds it equal.

/** Of each function which argument is the records, and which their told columns; from 0. */
export const RECORDS_ARGUMENTS =
  "BATCH_BALANCE 0 1, BATCH_CHECK 0 3, BATCH_COST 0 4, BATCH_DUE 0 4, BATCH_LOOKBACK 0 5, BATCH_LOSSES 0 4, BATCH_READY 0 4, BATCH_STAGES 0 4, BATCH_STEPS 0 4, ORDER_OUTLOOK 1 5, ORDER_PLAN 5 6, PLACE_LOAD 0 4, TAKE_COMPARED 0 4, TAKE_REASONS 0 2, TAKE_SUMMARY 0 3, TAKE_TREND 0 3, WORK_NEEDS 0 4, WORK_PLAN 0 6";
