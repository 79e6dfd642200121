import { isoDay, type PlanQuestion, plannedOrder } from "../../core";
import { planQuestion } from "../../door/index";
import type { PlannedOrderStep, PlanOrderAnswer, PlanOrderRequest } from "../../wire/orders";
import { ordersRemarks } from "../../wording/order-tables";
import { type RecordsNow, recordsNow } from "../reading/records-tab";

/** What sentences call the number of plants and the day. */
export const NAMED_ON_PAGE = { wanted: "Wanted", readyBy: "By" } as const;

/** The order that the page asks about. @throws Error in a sentence when it can't be planned */
export function orderAsked(now: RecordsNow, request: PlanOrderRequest): PlanQuestion {
  const { door, timetable, records, asOf } = now;
  const order = {
    wanted: cellOf(request.wanted),
    readyBy: request.by,
    method: request.method,
    assurance: cellOf(request.assurance),
    asOf: isoDay(asOf),
    variety: request.variety,
    harvest: request.harvest,
  };
  return planQuestion(door, order, {
    timetable,
    words: records.words,
    records: () => records,
    names: NAMED_ON_PAGE,
  });
}

/** A number that was entered; blank where none was. */
export function cellOf(entered: number): number | "" {
  return Number.isNaN(entered) ? "" : entered;
}

/** The plan of an order, by the records as they stand now. */
export function orderPlanned(request: PlanOrderRequest): PlanOrderAnswer {
  const now = recordsNow();
  const { method, steps, needs, remarks } = plannedOrder(orderAsked(now, request));
  return {
    method: method.name,
    steps: steps.map(
      ({ step, doBy, ...planned }): PlannedOrderStep => ({
        step: step.name,
        doBy: doBy === null ? null : isoDay(doBy),
        ...planned,
        caution: step.caution,
      }),
    ),
    needs,
    remark: ordersRemarks(remarks, "page"),
  };
}
