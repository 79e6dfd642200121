import { summaryAnswer } from "../core";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { columns, records, share, text } from "./parameter";
import { COLUMNS, RECORDS } from "./parameter-help";
import { TAKES_LEVEL } from "./usual";

export const takeSummary = functionOf(
  { records, by: text, level: share(TAKES_LEVEL), columns },
  (given) => summaryAnswer(given),
);

export const takeSummaryHelp: HelpOf<typeof takeSummary> = {
  sentence:
    "Take rates by variety, grafter or any other column, with the range that the counts allow.",
  parameters: {
    records: RECORDS,
    by: 'A column of the table, or several joined with "+".',
    level: "How many of 100 such ranges should hold, as a share.",
    columns: COLUMNS,
  },
  answers:
    "One row a group: batches, grafted, taken, take rate with its range, and how much more batches differ than chance makes them.",
  example: '=TAKE_SUMMARY(Records!A1:M7, "Variety")',
};
