import { outlookAnswer, USUAL_ASSURANCE } from "../core";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { asOf, columns, orders, records, share, timetable } from "./parameter";
import { AS_OF, COLUMNS, RECORDS, TIMETABLE } from "./parameter-help";

export const orderOutlook = functionOf(
  { orders, records, timetable, asOf, assurance: share(USUAL_ASSURANCE), columns },
  (given) => outlookAnswer(given),
);

export const orderOutlookHelp: HelpOf<typeof orderOutlook> = {
  sentence:
    "What becomes of your orders: plants set aside, the chance to fill each by its day, and what to do.",
  parameters: {
    orders:
      'Your table of orders with its header: Order, Variety ("A or B" where either will do), Wanted, By, Delivered, Closed.',
    records: RECORDS,
    timetable: TIMETABLE,
    asOf: AS_OF,
    assurance: "Chance with which orders are to be met, as a share.",
    columns: COLUMNS,
  },
  answers:
    "One row an open order, the earliest day first. Plants are set aside for the earliest day first; late ones fill an order where no other needs them in time. Short by and Full by hold with the assurance. Likely set aside, Short by and Full by are about plants still to be delivered.",
  example: "=ORDER_OUTLOOK(Orders!A1:G5, Records!A1:M7, , Settings!B1)",
};
