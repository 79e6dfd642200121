import { periodNamed, takeTrend as trendOf } from "../core";
import * as help from "../sentences/made/take-trend-help";
import { trendTable } from "../wording/take-tables";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { columns, records, textOrNone, timetableOrBuiltIn } from "./parameter";

const USUAL_PERIOD = "month";

export const takeTrend = functionOf(
  { records, period: textOrNone, by: textOrNone, columns, timetable: timetableOrBuiltIn },
  ({ period, ...given }) =>
    trendTable(trendOf({ ...given, period: period === null ? USUAL_PERIOD : periodNamed(period) })),
);

export const takeTrendHelp: HelpOf<typeof takeTrend> = {
  says: help,
  example: '=TAKE_TREND(Takes!A1:F25, "month")',
  onSample: '=TAKE_TREND(Records!A:AB, "month")',
};
