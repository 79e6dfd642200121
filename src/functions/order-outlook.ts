import { outlookAnswer, USUAL_ASSURANCE } from "../core";
import { levelArgument } from "../door/index";
import type { FunctionHelp, FunctionRun } from "./entry";
import { AS_OF, COLUMNS, RECORDS, TIMETABLE } from "./parameters";

export const orderOutlookHelp: FunctionHelp = {
  name: "ORDER_OUTLOOK",
  sentence:
    "What becomes of your orders: plants set aside, the chance to fill each by its day, and what to do.",
  parameters: [
    [
      "orders",
      'Your table of orders with its header: Order, Variety ("A or B" where either will do), Wanted, By, Delivered, Closed.',
    ],
    RECORDS,
    TIMETABLE,
    AS_OF,
    ["assurance?", "Chance with which orders are to be met, as a share; 0.8 if left out."],
    COLUMNS,
  ],
  answers:
    "One row an open order, the earliest day first. Plants are set aside for the earliest day first; late ones fill an order where no other needs them in time. Short by and Full by hold with the assurance. Likely set aside, Short by and Full by are about plants still to be delivered.",
  example: "=ORDER_OUTLOOK(Orders!A1:G5, Records!A1:M7, , Settings!B1)",
};

export const orderOutlook: FunctionRun = (
  door,
  [orders, records, timetable, asOf, assurance, columns],
) => {
  const steps = door.timetable(timetable);
  const day = door.day("asOf", asOf);
  return door.out(
    outlookAnswer({
      orders: door.orders(orders, day),
      records: door.records(records, { timetable: steps, asOf: day, columns }),
      timetable: steps,
      asOf: day,
      assurance: levelArgument("assurance", door.cell(assurance), USUAL_ASSURANCE),
    }),
  );
};
