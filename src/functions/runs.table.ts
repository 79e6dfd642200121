// Made by npm run sentences from the files of this folder; a test holds it equal.

import { batchBalance } from "./batch-balance";
import { batchCheck } from "./batch-check";
import { batchCost } from "./batch-cost";
import { batchDue } from "./batch-due";
import { batchLookback } from "./batch-lookback";
import { batchLosses } from "./batch-losses";
import { batchReady } from "./batch-ready";
import { batchStages } from "./batch-stages";
import { batchSteps } from "./batch-steps";
import type { SheetFunction } from "./function-of";
import { germinationSummary } from "./germination-summary";
import { orderOutlook } from "./order-outlook";
import { orderPlan } from "./order-plan";
import { placeLoad } from "./place-load";
import { takeCompared } from "./take-compared";
import { takeRange } from "./take-range";
import { takeRate } from "./take-rate";
import { takeReasons } from "./take-reasons";
import { takeSummary } from "./take-summary";
import { takeTrend } from "./take-trend";
import { timetable } from "./timetable";
import { workNeeds } from "./work-needs";
import { workPlan } from "./work-plan";

/** What each custom function does. The built file has these, and their help in its stubs alone. */
export const runs = {
  BATCH_BALANCE: batchBalance,
  BATCH_CHECK: batchCheck,
  BATCH_COST: batchCost,
  BATCH_DUE: batchDue,
  BATCH_LOOKBACK: batchLookback,
  BATCH_LOSSES: batchLosses,
  BATCH_READY: batchReady,
  BATCH_STAGES: batchStages,
  BATCH_STEPS: batchSteps,
  GERMINATION_SUMMARY: germinationSummary,
  ORDER_OUTLOOK: orderOutlook,
  ORDER_PLAN: orderPlan,
  PLACE_LOAD: placeLoad,
  TAKE_COMPARED: takeCompared,
  TAKE_RANGE: takeRange,
  TAKE_RATE: takeRate,
  TAKE_REASONS: takeReasons,
  TAKE_SUMMARY: takeSummary,
  TAKE_TREND: takeTrend,
  TIMETABLE: timetable,
  WORK_NEEDS: workNeeds,
  WORK_PLAN: workPlan,
} satisfies Readonly<Record<string, Pick<SheetFunction, "run">>>;

export type FunctionName = keyof typeof runs;
