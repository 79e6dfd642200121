import { isoDay, type PlanQuestion, plannedOrder } from "../../core";
import { planQuestion } from "../../door/index";
import type { PlannedOrderStep, PlanOrderAnswer, PlanOrderRequest } from "../../wire/orders";
import { recordsRemarks } from "../../wording/records";
import { pageNumber, pageText } from "../host/page-text";
import type { RecordsNow } from "../reading/records-tab";

/** What sentences call the number of plants and the day. */
export const NAMED_ON_PAGE = { wanted: "Wanted", readyBy: "By" } as const;

/** The order that the page asks about. @throws Error in a sentence when it can't be planned */
export function orderAsked(now: RecordsNow, request: PlanOrderRequest): PlanQuestion {
  const { door, timetable, records, asOf } = now;
  const order = {
    wanted: pageNumber(request.wanted),
    readyBy: pageText(NAMED_ON_PAGE.readyBy, request.by),
    method: pageText("Method", request.method),
    assurance: pageNumber(request.assurance),
    asOf: isoDay(asOf),
    variety: pageText("Variety", request.variety),
    harvest: pageText("Harvest months", request.harvest),
  };
  return planQuestion(door, order, { timetable, records: () => records, names: NAMED_ON_PAGE });
}

/** The plan of an order, by the records as they stand now. */
export function orderPlanned(now: RecordsNow, request: PlanOrderRequest): PlanOrderAnswer {
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
    remark: recordsRemarks(remarks, "page"),
  };
}
