import { summedTakes } from "../core";
import * as help from "../sentences/made/take-summary-help";
import { summaryTable } from "../wording/take-tables";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { columns, records, share, text, timetableOrBuiltIn } from "./parameter";
import { TAKES_LEVEL } from "./usual";

export const takeSummary = functionOf(
  { records, by: text, level: share(TAKES_LEVEL), columns, timetable: timetableOrBuiltIn },
  (given) => summaryTable(summedTakes(given)),
);

export const takeSummaryHelp: HelpOf<typeof takeSummary> = {
  says: help,
  example: '=TAKE_SUMMARY(Records!A1:M7, "Variety")',
};
