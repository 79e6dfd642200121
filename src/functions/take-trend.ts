import { builtInTimetable, periodNamed, trendAnswer } from "../core";
import { isMissing, textArgument } from "../door/index";
import type { FunctionHelp, FunctionRun } from "./entry";
import { COLUMNS, RECORDS } from "./parameters";

const USUAL_PERIOD = "month";

export const takeTrendHelp: FunctionHelp = {
  name: "TAKE_TREND",
  sentence: "Take rates over time, and when one is out of the ordinary or drifting.",
  parameters: [
    RECORDS,
    ["period?", 'Of grafting: "week", "month" or "quarter"; month if left out.'],
    ["by?", 'A column whose groups are each followed on their own, or several with "+".'],
    COLUMNS,
  ],
  answers:
    "One row a period: its rate, the usual rate, the limits within which periods have always varied, and one of five readings: usual, low, high, drifting down, drifting up. A period whose takes are not all counted is marked as still open.",
  example: '=TAKE_TREND(Takes!A1:F25, "month")',
};

export const takeTrend: FunctionRun = (door, [records, period, by, columns]) =>
  door.out(
    trendAnswer({
      period: isMissing(period)
        ? USUAL_PERIOD
        : periodNamed(textArgument("period", door.cell(period))),
      by: isMissing(by) ? null : textArgument("by", door.cell(by)),
      records: door.records(records, { timetable: builtInTimetable(), asOf: null, columns }),
    }),
  );
