import { batchBalance } from "./batch-balance";
import { batchCheck } from "./batch-check";
import { batchDue } from "./batch-due";
import { batchLookback } from "./batch-lookback";
import { batchReady } from "./batch-ready";
import { batchStages } from "./batch-stages";
import { batchSteps } from "./batch-steps";
import type { FunctionEntry } from "./entry";
import { germinationSummary } from "./germination-summary";
import { takeRange } from "./take-range";
import { takeRate } from "./take-rate";
import { takeSummary } from "./take-summary";
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
  germinationSummary,
  workNeeds,
  workPlan,
];
