/** The public list of core: everything that the rest of the project may use, by hand. */

// Answers and errors
export type { Answer, AnswerValue, Cells, ColumnKind, Kinds } from "./answer";
// Capabilities: inputs to Answer
export {
  BALANCE_COLUMNS,
  type BalanceRemark,
  type Balances,
  balances,
} from "./balance/balances";
// Cells and days
export { type Cell, cellText, type DayCell, type Grid, gridOf, isBlank } from "./cells/cell";
export { nameList, quoted, shortened, shortFacts } from "./cells/quoted";
export { readCount } from "./cells/read-count";
export { type DayOrder, dayColumnReader } from "./cells/read-day-column";
export type { ReadAs, Unread } from "./cells/unread";
export { errorShown, isLoading } from "./cells/upstream";
export { CHECK_COLUMNS, type CheckedRecords, checkedRecords } from "./check/checked-records";
export type { CostRemark, UnpricedItem } from "./costs/cost-remark";
export { COST_COLUMNS, type CostRow, type CostsSoFar, costsSoFar } from "./costs/costs-so-far";
export { type PricesReading, readPrices } from "./costs/read-prices";
export { type CivilDay, civilDay, daysLater, yearMonthDay } from "./dates/civil-day";
export { isoDay } from "./dates/day-text";
export { dayOfSerial, serialOfDay } from "./dates/serial";
export { calendarText } from "./due/calendar";
export { DUE_COLUMNS, type DueStatus, dueTasks, type Task } from "./due/due-tasks";
export { InputError, type InputFault } from "./faults/input-error";
export type { TakesFault } from "./faults/takes-fault";
export type { TimetableFault } from "./faults/timetable-fault";
export {
  GERMINATION_COLUMNS,
  type GerminationSummary,
  germinationSummary,
} from "./germination/germination-summary";
export type { SamplesReading } from "./germination/samples";
export { foldName } from "./names/fold-name";
export { type HarvestMonths, readHarvestMonths } from "./orders/harvest-months";
export type { Amount } from "./orders/needs-for";
export { type Order, type Orders, writtenVarieties } from "./orders/order";
export { ORDER_HEADER, type OrderField } from "./orders/order-columns";
export {
  OUTLOOK_COLUMNS,
  type OutlookOfOrders,
  type OutlookQuestion,
  orderOutlooks,
  outlookOfOrders,
} from "./orders/order-outlooks";
export type {
  OrderAction,
  OrderRowTroubles,
  OrdersRemark,
  OrderTrouble,
  PlanFact,
  PlanWarning,
} from "./orders/order-remark";
export {
  PLAN_COLUMNS,
  type PlannedOrder,
  type PlanQuestion,
  plannedOrder,
} from "./orders/planned-order";
export { orderTable, readOrders } from "./orders/read-orders";
export { USUAL_ASSURANCE } from "./orders/usual-assurance";
export { type Initials, initialsOf } from "./people/initials";
export { namesPeople } from "./people/people-columns";
export { peopleOf } from "./people/people-of";
export { LOAD_COLUMNS, type PlaceLoads, placeLoads } from "./places/place-loads";
export type { PlaceRemark } from "./places/place-remark";
export { type PlacesReading, readPlaces } from "./places/read-places";
export {
  type BatchStages,
  STAGE_COLUMNS,
  type StageRemark,
  type StageRow,
  stagesOf,
} from "./projection/batch-stages";
export { type BatchSteps, STEP_COLUMNS, stepsOf } from "./projection/batch-steps";
export { LOOKBACK_COLUMNS, type Lookback, lookback } from "./projection/lookback";
export {
  READY_COLUMNS,
  type ReadyPlants,
  type ReadyRow,
  readyPlants,
} from "./projection/ready-plants";
export type { ColumnTarget } from "./records/column-target";
// Tables
export { type LeftOut, leftOut } from "./records/left-out";
export { linesOf } from "./records/lines-of";
export { type LostColumn, lostColumns } from "./records/lost-columns";
export { type ReadingOptions, readRecords } from "./records/read-records";
export type { Records, RowTally } from "./records/records";
export { FACT_NAMES, LEAVE_ALONE } from "./records/target-names";
export { costOf, type Trouble } from "./records/trouble";
export type { FairReading } from "./statistics/fair-comparison";
export type { ChartReading } from "./statistics/proportion-chart";
export { proportionChart } from "./statistics/proportion-chart";
export type { RowFault, RowNote, RowTrouble, SmallTable } from "./tables/row-trouble";
export {
  COMPARED_COLUMNS,
  type ComparedQuestion,
  type ComparedTake,
  type ComparedTakes,
  comparedTakes,
} from "./takes/compared-takes";
export type { GroupColumn } from "./takes/group-column";
export { groupColumns } from "./takes/grouping";
export { lastMonth } from "./takes/last-month";
export { madeColumnNames } from "./takes/made-columns";
export { PERIODS, type Period, periodNamed, periodText } from "./takes/periods";
export { SUMMARY_COLUMNS, type SummedTakes, summedTakes } from "./takes/summed-takes";
export { takeRange, takeRate } from "./takes/take-rate";
export {
  type RatedGroup,
  REASON_COLUMNS,
  type ReasonReading,
  type TakeReason,
  type TakeReasons,
  takeReasons,
} from "./takes/take-reasons";
export { type TakeTrend, TREND_COLUMNS, type TrendPeriod, takeTrend } from "./takes/take-trend";
export type { TakesRemark } from "./takes/takes-remark";
export type { BuiltTimetable } from "./timetable/build-methods";
export { choiceOf, columnChoices } from "./timetable/column-choices";
export { methodFinder, methodOrRefuse, usualMethod } from "./timetable/method-of-batch";
export { cocoaCleftGraftMeasures } from "./timetable/methods/cocoa-cleft-graft";
export { leftOutByMethod, leftOutOfOpen } from "./timetable/methods-unread";
export { builtInTimetable, readTimetable } from "./timetable/read-timetable";
export type { Timetable } from "./timetable/timetable";
export {
  TIMETABLE_COLUMNS,
  TIMETABLE_HEADER,
} from "./timetable/timetable-columns";
export { type TimetableRow, timetableRows } from "./timetable/timetable-rows";
export { tabNames } from "./words/all-languages";
export { MONTH_NAMES, type TimetableField } from "./words/language-text";
export { lazily } from "./words/lazy-value";
export { normalText } from "./words/normal-text";
export { type PlannedWork, plannedWork, WORK_COLUMNS, type WorkPart } from "./work/planned-work";
export type { Proof } from "./work/proof";
export { type ClosedDaysReading, isClosedDays, readClosedDays } from "./work/read-closed-days";
export {
  CREW_HEADER,
  type CrewReading,
  crewColumns,
  crewRemarks,
  readCrew,
} from "./work/read-crew";
export { NEEDS_COLUMNS, type NeedingStep, type WorkNeeds, workNeeds } from "./work/work-needs";
export type { CrewRemark, NeedsRemark, PartRemark, WorkRemark } from "./work/work-remark";
