import { periodNamed, trendAnswer } from "../core";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { columns, records, textOrNone } from "./parameter";
import { COLUMNS, RECORDS } from "./parameter-help";

const USUAL_PERIOD = "month";

export const takeTrend = functionOf(
  { records, period: textOrNone, by: textOrNone, columns },
  ({ period, ...given }) =>
    trendAnswer({ ...given, period: period === null ? USUAL_PERIOD : periodNamed(period) }),
);

export const takeTrendHelp: HelpOf<typeof takeTrend> = {
  sentence: "Take rates over time, and when one is out of the ordinary or drifting.",
  parameters: {
    records: RECORDS,
    period: 'Of grafting: "week", "month" or "quarter"; month if left out.',
    by: 'A column whose groups are each followed on their own, or several with "+".',
    columns: COLUMNS,
  },
  answers:
    "One row a period: its rate, the usual rate, the limits within which periods have always varied, and one of five readings: usual, low, high, drifting down, drifting up. A period whose takes are not all counted is marked as still open.",
  example: '=TAKE_TREND(Takes!A1:F25, "month")',
};
