import { outlookOfOrders, USUAL_ASSURANCE } from "../core";
import * as help from "../sentences/made/order-outlook-help";
import { outlookTable } from "../wording/order-tables";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { asOf, columns, orders, records, share, timetable } from "./parameter";

export const orderOutlook = functionOf(
  { orders, records, timetable, asOf, assurance: share(USUAL_ASSURANCE), columns },
  (given) => outlookTable(outlookOfOrders(given)),
);

export const orderOutlookHelp: HelpOf<typeof orderOutlook> = {
  says: help,
  example: "=ORDER_OUTLOOK(Orders!A1:G5, Records!A1:M7, , Settings!B1)",
};
