import { reasonsAnswer } from "../core";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { columns, records, share } from "./parameter";
import { COLUMNS, RECORDS } from "./parameter-help";
import { TAKES_LEVEL } from "./usual";

export const takeReasons = functionOf({ records, level: share(TAKES_LEVEL), columns }, (given) =>
  reasonsAnswer(given),
);

export const takeReasonsHelp: HelpOf<typeof takeReasons> = {
  sentence: "Which recorded columns go with good and bad takes, alone and beside the others.",
  parameters: {
    records: RECORDS,
    level: "How sure a link must be to be named, as a share.",
    columns: COLUMNS,
  },
  answers:
    "One row a column, most first: how much of the spread between batches it goes with, its best and worst group, and a reading. What goes with takes need not cause them.",
  example: "=TAKE_REASONS(Takes!A1:F25)",
};
