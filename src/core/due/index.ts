/** What has to be done, day by day. */

export { calendarText } from "./calendar";
export { canWait, type DayLine, dayLines } from "./day-lines";
export {
  DUE_COLUMNS,
  type DueQuestion,
  type DueStatus,
  type DueTasks,
  dueTasks,
  type Task,
} from "./due-tasks";
export { missedJobs } from "./missed-jobs";
