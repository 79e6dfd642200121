/** Civil days as whole numbers; weeks, months and their names, serials. */

export {
  type CivilDay,
  civilDay,
  daysInMonth,
  daysLater,
  isoWeekday,
  yearMonthDay,
} from "./civil-day";
export { isoDay } from "./day-text";
export { isoWeek, isoWeekText, mondayOf } from "./iso-week";
export { firstDayOf, isoMonth, type Month, monthOf } from "./month";
export { isDateFiller, isWeekWord, monthOfWord, thirdOfWord } from "./month-words";
export { dayOfSerial, serialOfDay } from "./serial";
