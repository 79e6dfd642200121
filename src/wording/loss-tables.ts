import { type Answer, type BatchLosses, LOSS_COLUMNS, type LossRow } from "../core";
import { headers } from "../sentences/made/loss-columns";
import * as text from "../sentences/made/losses";
import { COST_REMARKS } from "./cost-tables";
import { fateWords, lossesRemarks, reasonWords } from "./losses";
import { sentenceOf, together } from "./sentence-of";
import { tableOf } from "./table-of";
import { groupText } from "./takes";

/** Where plants were lost: a row a group, stage and reason. */
export function lossesTable(losses: BatchLosses): Answer {
  const { by, isByReason, rows, remarks } = losses;
  const leftOut = lossesRemarks(losses, "cell");
  const own = ({ group, reason }: LossRow) =>
    isByReason ? [reasonWords(reason) || text.noReason()] : group.map(groupText);
  return tableOf({
    own: by.map(({ name }) => name),
    columns: LOSS_COLUMNS,
    headers: headers(),
    rows: rows.map((row) => ({
      own: own(row),
      cells: {
        ...row,
        stage: fateWords(row),
        reason: isByReason ? null : reasonWords(row.reason) || null,
      },
    })),
    remark: together([
      ...(leftOut === null ? [] : [leftOut]),
      ...remarks.map((one) => sentenceOf(COST_REMARKS, one)),
    ]),
  });
}
