import { batchLosses, hasReasons, madeColumnNames, NO_PRICES } from "../../core";
import type { LossesAnswer, LossesCalls, LossesRequest } from "../../wire/losses";
import { costRemarks } from "../../wording/cost-tables";
import { pricesNow } from "../reading/beside-tabs";
import { groupHeaders } from "../reading/group-headers";
import { initialsIn, namedTexts } from "../reading/named-text";
import { recordsNow } from "../reading/records-tab";
import type { AnswerersOf } from "./answerer";
import { textOrUsual } from "./fields";

/** Where plants were lost, by a column of the records. */
export function lossesAnswer({ by }: LossesRequest): LossesAnswer {
  const now = recordsNow();
  const { records, timetable } = now;
  const prices = pricesNow(now);
  const hasCosts = prices !== NO_PRICES;
  const losses = batchLosses({ records, by: by || null, timetable, prices });
  const initials = initialsIn(records);
  return {
    by,
    columns: [
      ...(hasReasons(records) ? ["Reason"] : []),
      ...groupHeaders(records),
      ...madeColumnNames(records).filter((name) => name === "Season"),
    ],
    isByReason: losses.isByReason,
    rows: losses.rows.map((row) => ({
      ...row,
      group: namedTexts(row.group, losses.by, initials),
    })),
    notCounted: losses.notCounted,
    withoutMethod: losses.withoutMethod,
    leftOut: losses.leftOut,
    hasCosts,
    costRemark: hasCosts ? costRemarks(losses.remarks) : null,
  };
}

export const lossesCalls: AnswerersOf<LossesCalls> = {
  sidebarLosses: { asked: { by: textOrUsual }, answer: lossesAnswer },
};
