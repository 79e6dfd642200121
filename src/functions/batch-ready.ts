import { readyPlants } from "../core";
import * as help from "../sentences/made/batch-ready-help";
import { readyTable } from "../wording/batch-tables";
import type { HelpOf } from "./entry";
import { forecast } from "./forecast";
import { functionOf } from "./function-of";

export const batchReady = functionOf(forecast, (given) => readyTable(readyPlants(given)));

export const batchReadyHelp: HelpOf<typeof batchReady> = {
  says: help,
  example: "=BATCH_READY(Records!A1:M7, , Settings!B1)",
};
