import { comparedAnswer } from "../core";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { columns, records, share, text } from "./parameter";
import { COLUMNS, RECORDS } from "./parameter-help";
import { TAKES_LEVEL } from "./usual";

export const takeCompared = functionOf(
  { records, by: text, evenFor: text, level: share(TAKES_LEVEL), columns },
  (given) => comparedAnswer(given),
);

export const takeComparedHelp: HelpOf<typeof takeCompared> = {
  sentence:
    "Take rates of grafters, scion sources or any other groups, evened for what they could not choose.",
  parameters: {
    records: RECORDS,
    by: "The column whose groups are compared, such as Grafter.",
    evenFor:
      'What to even for: one column or several joined with "+", such as Variety+Month; Month, Season, Rootstock age in weeks and Scion days stored are made from the days.',
    level: "How many of 100 ranges should hold, as a share.",
    columns: COLUMNS,
  },
  answers:
    "One row a group: its rate, the rate expected of anyone with its batches, its rate evened for them with a range, and one of four readings: above the rest, below the rest, no clear difference, too few to tell.",
  example: '=TAKE_COMPARED(Takes!A1:F25, "Grafter", "Variety")',
};
