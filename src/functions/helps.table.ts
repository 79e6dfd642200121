// Made by npm run sentences from the files of this folder; a test holds it equal.

import { batchBalanceHelp } from "./batch-balance";
import { batchCheckHelp } from "./batch-check";
import { batchCostHelp } from "./batch-cost";
import { batchDueHelp } from "./batch-due";
import { batchLookbackHelp } from "./batch-lookback";
import { batchLossesHelp } from "./batch-losses";
import { batchReadyHelp } from "./batch-ready";
import { batchStagesHelp } from "./batch-stages";
import { batchStepsHelp } from "./batch-steps";
import type { HelpOf } from "./entry";
import { germinationSummaryHelp } from "./germination-summary";
import { orderOutlookHelp } from "./order-outlook";
import { orderPlanHelp } from "./order-plan";
import { placeLoadHelp } from "./place-load";
import type { FunctionName, runs } from "./runs.table";
import { takeComparedHelp } from "./take-compared";
import { takeRangeHelp } from "./take-range";
import { takeRateHelp } from "./take-rate";
import { takeReasonsHelp } from "./take-reasons";
import { takeSummaryHelp } from "./take-summary";
import { takeTrendHelp } from "./take-trend";
import { timetableHelp } from "./timetable";
import { workNeedsHelp } from "./work-needs";
import { workPlanHelp } from "./work-plan";

/** What is said of each. A function without its help, or help of none, does not compile. */
export const helps: { readonly [Name in FunctionName]: HelpOf<(typeof runs)[Name]> } = {
  BATCH_BALANCE: batchBalanceHelp,
  BATCH_CHECK: batchCheckHelp,
  BATCH_COST: batchCostHelp,
  BATCH_DUE: batchDueHelp,
  BATCH_LOOKBACK: batchLookbackHelp,
  BATCH_LOSSES: batchLossesHelp,
  BATCH_READY: batchReadyHelp,
  BATCH_STAGES: batchStagesHelp,
  BATCH_STEPS: batchStepsHelp,
  GERMINATION_SUMMARY: germinationSummaryHelp,
  ORDER_OUTLOOK: orderOutlookHelp,
  ORDER_PLAN: orderPlanHelp,
  PLACE_LOAD: placeLoadHelp,
  TAKE_COMPARED: takeComparedHelp,
  TAKE_RANGE: takeRangeHelp,
  TAKE_RATE: takeRateHelp,
  TAKE_REASONS: takeReasonsHelp,
  TAKE_SUMMARY: takeSummaryHelp,
  TAKE_TREND: takeTrendHelp,
  TIMETABLE: timetableHelp,
  WORK_NEEDS: workNeedsHelp,
  WORK_PLAN: workPlanHelp,
};
