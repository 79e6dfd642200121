import { comparedTakes } from "../core";
import * as help from "../sentences/made/take-compared-help";
import { comparedTable } from "../wording/take-tables";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { columns, records, share, text, timetableOrBuiltIn } from "./parameter";
import { TAKES_LEVEL } from "./usual";

export const takeCompared = functionOf(
  {
    records,
    by: text,
    evenFor: text,
    level: share(TAKES_LEVEL),
    columns,
    timetable: timetableOrBuiltIn,
  },
  (given) => comparedTable(comparedTakes(given)),
);

export const takeComparedHelp: HelpOf<typeof takeCompared> = {
  says: help,
  example: '=TAKE_COMPARED(Takes!A1:F25, "Grafter", "Variety")',
  onSample: '=TAKE_COMPARED(Records!A:AB, "Grafter", "Variety")',
};
