/** How many plants take: summed, compared, over time, by reasons. */

export {
  COMPARED_COLUMNS,
  type ComparedQuestion,
  type ComparedTake,
  type ComparedTakes,
  comparedTakes,
} from "./compared-takes";
export type { GroupColumn } from "./group-column";
export { groupBatches, groupColumns } from "./grouping";
export { lastMonth } from "./last-month";
export { madeColumnNames, scionsCutOn } from "./made-columns";
export { PERIODS, type Period, periodNamed, periodText } from "./periods";
export { SUMMARY_COLUMNS, type SummedTakes, summedTakes } from "./summed-takes";
export { takeRange, takeRate } from "./take-rate";
export {
  type RatedGroup,
  REASON_COLUMNS,
  type ReasonReading,
  type TakeReason,
  type TakeReasons,
  takeReasons,
} from "./take-reasons";
export { type TakeTrend, TREND_COLUMNS, type TrendPeriod, takeTrend } from "./take-trend";
export type { TakesRemark } from "./takes-remark";
