import { stepsOf } from "../core";
import * as help from "../sentences/made/batch-steps-help";
import { stepsTable } from "../wording/batch-tables";
import type { HelpOf } from "./entry";
import { forecast } from "./forecast";
import { functionOf } from "./function-of";

export const batchSteps = functionOf(forecast, (given) => stepsTable(stepsOf(given)));

export const batchStepsHelp: HelpOf<typeof batchSteps> = {
  says: help,
  example: "=BATCH_STEPS(Records!A1:M3, , Settings!B1)",
};
