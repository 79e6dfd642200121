import { workPlanAnswer } from "../core";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { asOf, closedDays, columns, crew, records, timetable, wholeNumber } from "./parameter";
import { AS_OF, COLUMNS, RECORDS, TIMETABLE } from "./parameter-help";
import { PLANNED_DAYS } from "./usual";

export const workPlan = functionOf(
  { records, timetable, crew, asOf, days: wholeNumber(PLANNED_DAYS), closedDays, columns },
  (given) => workPlanAnswer(given),
);

export const workPlanHelp: HelpOf<typeof workPlan> = {
  sentence: "Sets the tasks of the coming days into days and persons, or says why they don't fit.",
  parameters: {
    records: RECORDS,
    timetable: TIMETABLE,
    crew: "Your table of persons: Person, Tasks (blank for all), Hours a day, Off from, Off to.",
    asOf: AS_OF,
    days: "How many days to plan, 1 to 366.",
    closedDays:
      "A table with Day, and To for stretches, on which nobody works; a weekday's name closes every such day.",
    columns: COLUMNS,
  },
  answers:
    "What doesn't fit first, with the sum that proves it and the fewest hours more that mend it; then one row a person and part of a task, nearest to the usual days inside the tasks' windows. A task without known hours is a reminder on its usual day.",
  example:
    "=WORK_PLAN(Records!A1:M7, Steps!A1:J8, Crew!A1:E3, Settings!B1, 14, 'Closed days'!A1:A2)",
};
