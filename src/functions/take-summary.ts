import { builtInTimetable, summaryAnswer } from "../core";
import { levelArgument, textArgument } from "../door/index";
import type { FunctionHelp, FunctionRun } from "./entry";
import { COLUMNS, RECORDS } from "./parameters";

const USUAL_LEVEL = 0.95;

export const takeSummaryHelp: FunctionHelp = {
  name: "TAKE_SUMMARY",
  sentence:
    "Take rates by variety, grafter or any other column, with the range that the counts allow.",
  parameters: [
    RECORDS,
    ["by", 'A column of the table, or several joined with "+".'],
    ["level?", "How many of 100 such ranges should hold, as a share; 0.95 if left out."],
    COLUMNS,
  ],
  answers:
    "One row a group: batches, grafted, taken, take rate with its range, and how much more batches differ than chance makes them.",
  example: '=TAKE_SUMMARY(Records!A1:M7, "Variety")',
};

export const takeSummary: FunctionRun = (door, [records, by, level, columns]) =>
  door.out(
    summaryAnswer({
      by: textArgument("by", door.cell(by)),
      level: levelArgument("level", door.cell(level), USUAL_LEVEL),
      records: door.records(records, { timetable: builtInTimetable(), asOf: null, columns }),
    }),
  );
