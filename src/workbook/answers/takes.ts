import { summedTakes } from "../../core";
import type {
  CompareAnswer,
  CompareRequest,
  TakesAnswer,
  TakesCalls,
  TakesRequest,
} from "../../wire/takes";
import { groupHeaders } from "../reading/group-headers";
import { initialsIn, namedTexts } from "../reading/named-text";
import { type RecordsNow, recordsNow } from "../reading/records-tab";
import { TAKES_LEVEL, usualGrouping } from "../reading/usual-grouping";
import { compareTakes } from "../takes/compare-takes";
import type { AnswerersOf } from "./answerer";
import { textOrUsual } from "./fields";

/** Take rates by a column of the records. */
export function takesAnswer({ by }: TakesRequest): TakesAnswer {
  const now = recordsNow();
  const columns = groupHeaders(now.records);
  const wanted = by || usualGrouping(now.records);
  const asked = headerFor(now, wanted, columns);
  const summed = summedTakes({ records: now.records, by: asked, level: TAKES_LEVEL });
  const initials = initialsIn(now.records);
  return {
    by: asked,
    columns,
    rows: summed.groups.map((one) => ({
      group: namedTexts(one.group, summed.by, initials),
      batches: one.batches,
      grafted: one.grafted,
      taken: one.taken,
      rate: one.takeRate,
      from: one.from,
      to: one.to,
      spread: summed.spread,
      remarks: one.remarks,
    })),
  };
}

/** Takes compared, over time, and what they may hang on. */
export function compareAnswer(request: CompareRequest): CompareAnswer {
  const { records, settings } = recordsNow();
  return compareTakes(records, settings.compareBy, request);
}

/** The person's own header for our name of a column, so that it is not offered twice. */
function headerFor({ records }: RecordsNow, asked: string, columns: readonly string[]): string {
  if (columns.includes(asked)) return asked;
  const own = records.columns.find(
    ({ target, header }) =>
      target?.kind === "fact" && target.fact === asked.toLowerCase() && columns.includes(header),
  );
  return own?.header ?? asked;
}

export const takesCalls: AnswerersOf<TakesCalls> = {
  sidebarTakes: { asked: { by: textOrUsual }, answer: takesAnswer },
  sidebarCompareTakes: {
    asked: { by: textOrUsual, evenFor: textOrUsual, period: textOrUsual },
    answer: compareAnswer,
  },
};
