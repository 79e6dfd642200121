import { balanceAnswer, builtInTimetable } from "../core";
import type { FunctionHelp, FunctionRun } from "./entry";
import { COLUMNS, RECORDS } from "./parameters";

export const batchBalanceHelp: FunctionHelp = {
  name: "BATCH_BALANCE",
  sentence:
    "Where every plant of each batch went: culled, given, dispatched, standing or unexplained.",
  parameters: [RECORDS, COLUMNS],
  answers:
    "One row a batch. Unexplained is what should stand less what stands by the last count; below 0 when more stand than can.",
  example: "=BATCH_BALANCE(Records!A1:M7)",
};

export const batchBalance: FunctionRun = (door, [records, columns]) =>
  door.out(
    balanceAnswer(door.records(records, { timetable: builtInTimetable(), asOf: null, columns })),
  );
