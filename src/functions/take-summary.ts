import { summedTakes } from "../core";
import * as help from "../sentences/made/take-summary-help";
import { summaryTable } from "../wording/take-tables";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { columns, records, share, text } from "./parameter";
import { COLUMNS, RECORDS } from "./parameter-help";
import { TAKES_LEVEL } from "./usual";

export const takeSummary = functionOf(
  { records, by: text, level: share(TAKES_LEVEL), columns },
  (given) => summaryTable(summedTakes(given)),
);

export const takeSummaryHelp: HelpOf<typeof takeSummary> = {
  sentence: help.sentence,
  parameters: {
    records: RECORDS,
    by: help.by,
    level: help.level,
    columns: COLUMNS,
  },
  answers: help.answers,
  example: '=TAKE_SUMMARY(Records!A1:M7, "Variety")',
};
