import { builtInTimetable, comparedAnswer } from "../core";
import { levelArgument, textArgument } from "../door/index";
import type { FunctionHelp, FunctionRun } from "./entry";
import { COLUMNS, RECORDS } from "./parameters";

const USUAL_LEVEL = 0.95;

export const takeComparedHelp: FunctionHelp = {
  name: "TAKE_COMPARED",
  sentence:
    "Take rates of grafters, scion sources or any other groups, evened for what they could not choose.",
  parameters: [
    RECORDS,
    ["by", "The column whose groups are compared, such as Grafter."],
    [
      "evenFor",
      'What to even for: one column or several joined with "+", such as Variety+Month; Month, Season, Rootstock age in weeks and Scion days stored are made from the days.',
    ],
    ["level?", "How many of 100 ranges should hold, as a share; 0.95 if left out."],
    COLUMNS,
  ],
  answers:
    "One row a group: its rate, the rate expected of anyone with its batches, its rate evened for them with a range, and one of four readings: above the rest, below the rest, no clear difference, too few to tell.",
  example: '=TAKE_COMPARED(Takes!A1:F25, "Grafter", "Variety")',
};

export const takeCompared: FunctionRun = (door, [records, by, evenFor, level, columns]) =>
  door.out(
    comparedAnswer({
      by: textArgument("by", door.cell(by)),
      evenFor: textArgument("evenFor", door.cell(evenFor)),
      level: levelArgument("level", door.cell(level), USUAL_LEVEL),
      records: door.records(records, { timetable: builtInTimetable(), asOf: null, columns }),
    }),
  );
