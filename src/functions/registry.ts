import { ifLeftOut } from "../sentences/made/parameter-help";
import { batchBalanceHelp } from "./batch-balance";
import { batchCheckHelp } from "./batch-check";
import { batchCostHelp } from "./batch-cost";
import { batchDueHelp } from "./batch-due";
import { batchLookbackHelp } from "./batch-lookback";
import { batchReadyHelp } from "./batch-ready";
import { batchStagesHelp } from "./batch-stages";
import { batchStepsHelp } from "./batch-steps";
import type { HelpOf, Message, Said } from "./entry";
import type { SheetFunction } from "./function-of";
import { germinationSummaryHelp } from "./germination-summary";
import { orderOutlookHelp } from "./order-outlook";
import { orderPlanHelp } from "./order-plan";
import type { Parameter } from "./parameter";
import { placeLoadHelp } from "./place-load";
import { type FunctionName, runs } from "./runs";
import { takeComparedHelp } from "./take-compared";
import { takeRangeHelp } from "./take-range";
import { takeRateHelp } from "./take-rate";
import { takeReasonsHelp } from "./take-reasons";
import { takeSummaryHelp } from "./take-summary";
import { takeTrendHelp } from "./take-trend";
import { timetableHelp } from "./timetable";
import { workNeedsHelp } from "./work-needs";
import { workPlanHelp } from "./work-plan";

export interface ParameterEntry {
  /** As it stands in the formula helper. */
  readonly name: string;
  /** One sentence: what to give. */
  readonly sentence: string;
  readonly optional: boolean;
}

export interface FunctionEntry extends Said<string>, Pick<SheetFunction, "run"> {
  readonly name: FunctionName;
  readonly parameters: readonly ParameterEntry[];
}

/** A function without its help, or help of none, does not compile. */
const helps: { readonly [Name in FunctionName]: HelpOf<(typeof runs)[Name]> } = {
  TIMETABLE: timetableHelp,
  BATCH_STAGES: batchStagesHelp,
  BATCH_STEPS: batchStepsHelp,
  BATCH_DUE: batchDueHelp,
  BATCH_READY: batchReadyHelp,
  BATCH_LOOKBACK: batchLookbackHelp,
  BATCH_BALANCE: batchBalanceHelp,
  BATCH_CHECK: batchCheckHelp,
  TAKE_RATE: takeRateHelp,
  TAKE_RANGE: takeRangeHelp,
  TAKE_SUMMARY: takeSummaryHelp,
  TAKE_COMPARED: takeComparedHelp,
  TAKE_TREND: takeTrendHelp,
  TAKE_REASONS: takeReasonsHelp,
  GERMINATION_SUMMARY: germinationSummaryHelp,
  ORDER_PLAN: orderPlanHelp,
  ORDER_OUTLOOK: orderOutlookHelp,
  WORK_NEEDS: workNeedsHelp,
  WORK_PLAN: workPlanHelp,
  PLACE_LOAD: placeLoadHelp,
  BATCH_COST: batchCostHelp,
};

/**
 * Every custom function, in the order of the reference. The built file knows them by their stubs, and
 * leaves this list and all that is said in it out.
 */
export const registry: readonly FunctionEntry[] = /* @__PURE__ */ entries();

function entries(): readonly FunctionEntry[] {
  return (Object.keys(runs) as FunctionName[]).map((name) => {
    const { parameters, run } = runs[name];
    const { parameters: sentences, sentence, answers, example, exampleHeadings } = helps[name];
    return {
      sentence: said(sentence),
      answers: said(answers),
      example,
      ...(exampleHeadings === undefined ? {} : { exampleHeadings: exampleHeadings.map(said) }),
      name,
      parameters: Object.entries<Parameter<unknown>>(parameters).map(
        ([parameter, { optional, usual }]) => ({
          name: parameter,
          sentence: withUsual(
            said((sentences as Readonly<Record<string, Message>>)[parameter] ?? ""),
            usual,
          ),
          optional,
        }),
      ),
      run,
    };
  });
}

function said(message: Message): string {
  return typeof message === "string" ? message : message();
}

/** The usual value is said by the parameter itself, so that no sentence can tell another. */
function withUsual(sentence: string, usual?: number): string {
  return usual === undefined ? sentence : ifLeftOut({ sentence, usual: String(usual) });
}
