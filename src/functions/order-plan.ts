import { plannedOrder, USUAL_ASSURANCE } from "../core";
import { isMissing, planQuestion } from "../door/index";
import * as help from "../sentences/made/order-plan-help";
import { planTable } from "../wording/order-tables";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { columns, raw, rawOrNone, timetable } from "./parameter";

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
    planTable(
      plannedOrder(
        planQuestion(door, order, {
          timetable: steps,
          words: door.words(told, steps),
          records: (day) =>
            isMissing(table)
              ? null
              : door.records(table, { timetable: steps, asOf: day, columns: told }),
        }),
      ),
    ),
);

export const orderPlanHelp: HelpOf<typeof orderPlan> = {
  says: help,
  example: '=ORDER_PLAN(150, DATE(2027, 9, 1), , "", 0.8, Records!A1:M7, , Settings!B1)',
  onSample: '=ORDER_PLAN(150, DATE(2027, 8, 31), , "Cocoa cleft graft")',
};
