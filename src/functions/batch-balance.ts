import { balances } from "../core";
import * as help from "../sentences/made/batch-balance-help";
import { balanceTable } from "../wording/batch-tables";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { columns, records, timetableOrBuiltIn } from "./parameter";

export const batchBalance = functionOf(
  { records, columns, timetable: timetableOrBuiltIn },
  ({ records: read, timetable }) => balanceTable(balances(read, timetable)),
);

export const batchBalanceHelp: HelpOf<typeof batchBalance> = {
  says: help,
  example: "=BATCH_BALANCE(Records!A1:M7)",
};
