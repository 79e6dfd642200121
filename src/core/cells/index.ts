/** What a cell says: a count, a day, a text, or why it can't be read. */

export { type Cell, cellText, type DayCell, type Grid, gridOf, isBlank } from "./cell";
export { asMeant, dittoRows } from "./ditto-rows";
export { eachName } from "./each-name";
export { nameList, quoted, shortened, shortFacts } from "./quoted";
export { readCount } from "./read-count";
export type { DecimalMark } from "./read-count-text";
export {
  type DayColumnReader,
  type DayOrder,
  type DayReading,
  dayColumnReader,
} from "./read-day-column";
export { readDayText, type UndatedDay } from "./read-day-text";
export { settleYear, type YearHints } from "./settle-year";
export type { ReadAs, Unread } from "./unread";
export { errorShown, isLoading } from "./upstream";
