import { builtInTimetable, reasonsAnswer } from "../core";
import { levelArgument } from "../door/index";
import type { FunctionHelp, FunctionRun } from "./entry";
import { COLUMNS, RECORDS } from "./parameters";

const USUAL_LEVEL = 0.95;

export const takeReasonsHelp: FunctionHelp = {
  name: "TAKE_REASONS",
  sentence: "Which recorded columns go with good and bad takes, alone and beside the others.",
  parameters: [
    RECORDS,
    ["level?", "How sure a link must be to be named, as a share; 0.95 if left out."],
    COLUMNS,
  ],
  answers:
    "One row a column, most first: how much of the spread between batches it goes with, its best and worst group, and a reading. What goes with takes need not cause them.",
  example: "=TAKE_REASONS(Takes!A1:F25)",
};

export const takeReasons: FunctionRun = (door, [records, level, columns]) =>
  door.out(
    reasonsAnswer({
      level: levelArgument("level", door.cell(level), USUAL_LEVEL),
      records: door.records(records, { timetable: builtInTimetable(), asOf: null, columns }),
    }),
  );
