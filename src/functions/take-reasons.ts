import { takeReasons as reasonsOf } from "../core";
import * as help from "../sentences/made/take-reasons-help";
import { reasonsTable } from "../wording/take-tables";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { columns, records, share, timetableOrBuiltIn } from "./parameter";
import { TAKES_LEVEL } from "./usual";

export const takeReasons = functionOf(
  { records, level: share(TAKES_LEVEL), columns, timetable: timetableOrBuiltIn },
  (given) => reasonsTable(reasonsOf(given)),
);

export const takeReasonsHelp: HelpOf<typeof takeReasons> = {
  says: help,
  example: "=TAKE_REASONS(Takes!A1:F25)",
  onSample: "=TAKE_REASONS(Records!A:AB)",
};
