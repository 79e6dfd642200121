import { stagesOf } from "../core";
import * as help from "../sentences/made/batch-stages-help";
import { stagesTable } from "../wording/batch-tables";
import type { HelpOf } from "./entry";
import { forecast } from "./forecast";
import { functionOf } from "./function-of";

export const batchStages = functionOf(forecast, (given) => stagesTable(stagesOf(given)));

export const batchStagesHelp: HelpOf<typeof batchStages> = {
  says: help,
  example: "=BATCH_STAGES(Records!A1:M7, , Settings!B1)",
};
