import { checkedRecords } from "../core";
import * as help from "../sentences/made/batch-check-help";
import { checkTable } from "../wording/check";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { asOfOrNone, columns, records, timetableWithFaults } from "./parameter";
import { AS_OF_OR_NONE, COLUMNS, RECORDS, TIMETABLE } from "./parameter-help";

export const batchCheck = functionOf(
  { records, timetable: timetableWithFaults, asOf: asOfOrNone, columns },
  (given) => checkTable(checkedRecords(given.records, given.timetable, given.asOf)),
  true,
);

export const batchCheckHelp: HelpOf<typeof batchCheck> = {
  sentence: help.sentence,
  parameters: {
    records: RECORDS,
    timetable: TIMETABLE,
    asOf: AS_OF_OR_NONE,
    columns: COLUMNS,
  },
  answers: help.answers,
  example: "=BATCH_CHECK(Records!A1:M7, , Settings!B1)",
};
