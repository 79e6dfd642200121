import { batchBalanceHelp } from "./batch-balance";
import { batchCheckHelp } from "./batch-check";
import { batchCostHelp } from "./batch-cost";
import { batchDueHelp } from "./batch-due";
import { batchLookbackHelp } from "./batch-lookback";
import { batchReadyHelp } from "./batch-ready";
import { batchStagesHelp } from "./batch-stages";
import { batchStepsHelp } from "./batch-steps";
import type { FunctionEntry, FunctionHelp } from "./entry";
import { germinationSummaryHelp } from "./germination-summary";
import { orderOutlookHelp } from "./order-outlook";
import { orderPlanHelp } from "./order-plan";
import { placeLoadHelp } from "./place-load";
import { runs } from "./runs";
import { takeComparedHelp } from "./take-compared";
import { takeRangeHelp } from "./take-range";
import { takeRateHelp } from "./take-rate";
import { takeReasonsHelp } from "./take-reasons";
import { takeSummaryHelp } from "./take-summary";
import { takeTrendHelp } from "./take-trend";
import { timetableHelp } from "./timetable";
import { workNeedsHelp } from "./work-needs";
import { workPlanHelp } from "./work-plan";

const helps: readonly FunctionHelp[] = [
  timetableHelp,
  batchStagesHelp,
  batchStepsHelp,
  batchDueHelp,
  batchReadyHelp,
  batchLookbackHelp,
  batchBalanceHelp,
  batchCheckHelp,
  takeRateHelp,
  takeRangeHelp,
  takeSummaryHelp,
  takeComparedHelp,
  takeTrendHelp,
  takeReasonsHelp,
  germinationSummaryHelp,
  orderPlanHelp,
  orderOutlookHelp,
  workNeedsHelp,
  workPlanHelp,
  placeLoadHelp,
  batchCostHelp,
];

/**
 * Every custom function, in the order of the reference. The built file knows them by their stubs, and
 * leaves this list and all that is said in it out.
 */
export const registry: readonly FunctionEntry[] = /* @__PURE__ */ helps.map((help) => ({
  ...help,
  parameters: help.parameters.map(([name, sentence]) => ({
    name: name.replace("?", ""),
    sentence,
    optional: name.endsWith("?"),
  })),
  run: runs[help.name],
}));
