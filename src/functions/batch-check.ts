import { checkedRecords } from "../core";
import * as help from "../sentences/made/batch-check-help";
import { checkTable } from "../wording/check";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { asOfOrNone, columns, records, timetableWithFaults } from "./parameter";

export const batchCheck = functionOf(
  { records, timetable: timetableWithFaults, asOf: asOfOrNone, columns },
  (given) => checkTable(checkedRecords(given.records, given.timetable, given.asOf)),
  true,
);

export const batchCheckHelp: HelpOf<typeof batchCheck> = {
  says: help,
  example: "=BATCH_CHECK(Records!A1:M7, , Settings!B1)",
};
