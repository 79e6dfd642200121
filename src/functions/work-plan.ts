import { workPlanAnswer } from "../core";
import { wholeNumberArgument } from "../door/index";
import type { FunctionHelp, FunctionRun } from "./entry";
import { AS_OF, COLUMNS, RECORDS, TIMETABLE } from "./parameters";

const USUAL_DAYS = 14;

export const workPlanHelp: FunctionHelp = {
  name: "WORK_PLAN",
  sentence: "Sets the tasks of the coming days into days and persons, or says why they don't fit.",
  parameters: [
    RECORDS,
    TIMETABLE,
    [
      "crew",
      "Your table of persons: Person, Tasks (blank for all), Hours a day, Off from, Off to.",
    ],
    AS_OF,
    ["days?", "How many days to plan, 1 to 366; 14 if left out."],
    [
      "closedDays?",
      "A table with Day, and To for stretches, on which nobody works; a weekday's name closes every such day.",
    ],
    COLUMNS,
  ],
  answers:
    "What doesn't fit first, with the sum that proves it and the fewest hours more that mend it; then one row a person and part of a task, nearest to the usual days inside the tasks' windows. A task without known hours is a reminder on its usual day.",
  example:
    "=WORK_PLAN(Records!A1:M7, Steps!A1:J8, Crew!A1:E3, Settings!B1, 14, 'Closed days'!A1:A2)",
};

export const workPlan: FunctionRun = (
  door,
  [records, timetable, crew, asOf, days, closedDays, columns],
) => {
  const day = door.day("asOf", asOf);
  const steps = door.timetable(timetable);
  return door.out(
    workPlanAnswer({
      asOf: day,
      timetable: steps,
      days: wholeNumberArgument("days", door.cell(days), USUAL_DAYS),
      crew: door.crew(crew, steps, day),
      closedDays: door.closedDays(closedDays, day),
      records: door.records(records, { timetable: steps, asOf: day, columns }),
    }),
  );
};
