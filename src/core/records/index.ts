/** A nursery's table, read: its batches, and everything in it that a person should look at. */

export { type Batch, NAMED_FACTS, type PlantsGone, TEXT_FACTS } from "./batch";
export { likeName } from "./batch-names";
export {
  type CellReaders,
  cellReaders,
  plainlyNotDone,
  type ReadingHabits,
} from "./cell-readers";
export type { ColumnMatch } from "./column-match";
export { type ColumnTarget, type TargetKey, targetKey } from "./column-target";
export {
  type CareToday,
  type GeneralShares,
  type JobNeverRecorded,
  type LeftOut,
  leftOut,
  type MethodsUnread,
  timetableLeftOut,
} from "./left-out";
export { linesOf } from "./lines-of";
export { type LostColumn, lostColumns } from "./lost-columns";
export { lastCounted, lotIndexes, startedWith } from "./lots";
export type { LogEvent } from "./read-log";
export { readRecords } from "./read-records";
export type { ReadingOptions } from "./read-tables";
export { type Records, type RowTally, stepIndex } from "./records";
export { FACT_NAMES, factNamed, isLeaveAlone, LEAVE_ALONE } from "./target-names";
export {
  isOfTable,
  isToldHeader,
  type MethodTold,
  NO_TAB,
  OLDER_TOLD_HEADER,
  pairKey,
  readTold,
  TOLD_AS,
  TOLD_HEADER,
  type Told,
  type ToldAs,
  type ToldWords,
  toldAs,
} from "./told-words";
export { byCost, COST, costOf, type Trouble } from "./trouble";
