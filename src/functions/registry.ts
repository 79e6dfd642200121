import { batchBalance } from "./batch-balance";
import { batchCheck } from "./batch-check";
import { batchCost } from "./batch-cost";
import { batchDue } from "./batch-due";
import { batchLookback } from "./batch-lookback";
import { batchReady } from "./batch-ready";
import { batchStages } from "./batch-stages";
import { batchSteps } from "./batch-steps";
import type { FunctionEntry } from "./entry";
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

/** Every custom function, in the order of the reference. */
export const registry: readonly FunctionEntry[] = [
  timetable,
  batchStages,
  batchSteps,
  batchDue,
  batchReady,
  batchLookback,
  batchBalance,
  batchCheck,
  takeRate,
  takeRange,
  takeSummary,
  takeCompared,
  takeTrend,
  takeReasons,
  germinationSummary,
  orderPlan,
  orderOutlook,
  workNeeds,
  workPlan,
  placeLoad,
  batchCost,
];
