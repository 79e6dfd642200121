import { planAnswer, USUAL_ASSURANCE } from "../core";
import { isMissing, planQuestion } from "../door/index";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { columns, raw, rawOrNone, timetable } from "./parameter";
import { COLUMNS, TIMETABLE } from "./parameter-help";

export const orderPlan = functionOf(
  {
    wanted: raw,
    readyBy: raw,
    timetable,
    method: raw,
    assurance: { ...rawOrNone, usual: USUAL_ASSURANCE },
    records: rawOrNone,
    columns,
    asOf: rawOrNone,
    variety: rawOrNone,
    harvest: rawOrNone,
  },
  ({ timetable: steps, records: table, columns: told, ...order }, door) =>
    planAnswer(
      planQuestion(door, order, {
        timetable: steps,
        records: (day) =>
          isMissing(table)
            ? null
            : door.records(table, { timetable: steps, asOf: day, columns: told }),
      }),
    ),
);

export const orderPlanHelp: HelpOf<typeof orderPlan> = {
  sentence:
    "An order planned backwards: by which day each step is to be done, from how many plants, with what needs.",
  parameters: {
    wanted: "Plants wanted, a whole number.",
    readyBy: "The day by which they are to be ready.",
    timetable: TIMETABLE,
    method: "Name of the method; leave blank for the first of the timetable.",
    assurance: "Chance with which the order is to be met, as a share.",
    records:
      "Your table of batches with its header, to plan by what your nursery keeps and how long it takes.",
    columns: COLUMNS,
    asOf: "The day you plan on; the latest day in the records if left out, so give it where days to come are written down.",
    variety:
      'Variety that is wanted; of "A or B" the first is planned. One like the others if left out.',
    harvest:
      'Months in which seed is harvested, such as "Oct-Mar, May-Aug", or a table of crops with such months.',
  },
  answers:
    "One row a step, and All with the needs added up. Plants is never less than the plain division by what is kept; Remark says both, and when it is too late.",
  example: '=ORDER_PLAN(150, DATE(2027, 9, 1), , "", 0.8, Records!A1:M7, , Settings!B1)',
};
