import { planAnswer } from "../core";
import { isMissing, planQuestion } from "../door/index";
import type { FunctionHelp, FunctionRun } from "./entry";
import { COLUMNS, TIMETABLE } from "./parameters";

export const orderPlanHelp: FunctionHelp = {
  name: "ORDER_PLAN",
  sentence:
    "An order planned backwards: by which day each step is to be done, from how many plants, with what needs.",
  parameters: [
    ["wanted", "Plants wanted, a whole number."],
    ["readyBy", "The day by which they are to be ready."],
    TIMETABLE,
    ["method", "Name of the method; leave blank for the first of the timetable."],
    ["assurance?", "Chance with which the order is to be met, as a share; 0.8 if left out."],
    [
      "records?",
      "Your table of batches with its header, to plan by what your nursery keeps and how long it takes.",
    ],
    COLUMNS,
    [
      "asOf?",
      "The day you plan on; the latest day in the records if left out, so give it where days to come are written down.",
    ],
    [
      "variety?",
      'Variety that is wanted; of "A or B" the first is planned. One like the others if left out.',
    ],
    [
      "harvest?",
      'Months in which seed is harvested, such as "Oct-Mar, May-Aug", or a table of crops with such months.',
    ],
  ],
  answers:
    "One row a step, and All with the needs added up. Plants is never less than the plain division by what is kept; Remark says both, and when it is too late.",
  example: '=ORDER_PLAN(150, DATE(2027, 9, 1), , "", 0.8, Records!A1:M7, , Settings!B1)',
};

export const orderPlan: FunctionRun = (
  door,
  [wanted, readyBy, timetable, method, assurance, records, columns, asOf, variety, harvest],
) => {
  const steps = door.timetable(timetable);
  const order = { wanted, readyBy, method, assurance, asOf, variety, harvest };
  const question = planQuestion(door, order, steps, (day) =>
    isMissing(records) ? null : door.records(records, { timetable: steps, asOf: day, columns }),
  );
  return door.out(planAnswer(question));
};
