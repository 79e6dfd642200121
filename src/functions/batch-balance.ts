import { balanceAnswer } from "../core";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { columns, records } from "./parameter";
import { COLUMNS, RECORDS } from "./parameter-help";

export const batchBalance = functionOf({ records, columns }, ({ records: read }) =>
  balanceAnswer(read),
);

export const batchBalanceHelp: HelpOf<typeof batchBalance> = {
  sentence:
    "Where every plant of each batch went: culled, given, dispatched, standing or unexplained.",
  parameters: {
    records: RECORDS,
    columns: COLUMNS,
  },
  answers:
    "One row a batch. Unexplained is what should stand less what stands by the last count; below 0 when more stand than can.",
  example: "=BATCH_BALANCE(Records!A1:M7)",
};
