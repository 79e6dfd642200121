import {
  type Answer,
  COST_COLUMNS,
  type CostRemark,
  type CostRow,
  type CostsSoFar,
  type UnpricedItem,
} from "../core";
import { headers } from "../sentences/made/cost-columns";
import * as text from "../sentences/made/costs";
import { fewNames } from "./names";
import { RECORDS_REMARKS } from "./records";
import { type SentencesOf, sentenceOf, together } from "./sentence-of";
import { ROW_TROUBLES } from "./small-tables";
import { tableOf } from "./table-of";

/** More than a nursery has items. */
const MOST_NAMES = 12;

const few = (names: readonly string[]) => fewNames(names, MOST_NAMES);

/** What is to be said beside costs. */
export const COST_REMARKS: SentencesOf<CostRemark> = {
  ...RECORDS_REMARKS,
  ...ROW_TROUBLES,
  "items-without-price": ({ items }) => text.noPrice({ items: few(items.map(itemWords)) }),
  "hour-without-price": text.noHourPrice,
  "hour-not-used": text.hourUnused,
  "steps-without-rate": ({ steps }) => text.noRate({ steps: few(steps) }),
  "steps-without-plants": ({ batches }) =>
    text.noPlants({ batches: few(batches.map(text.batchSteps)) }),
  "prices-not-needed": ({ items }) => text.notNeeded({ items: few(items) }),
  "not-begun": text.notBegun,
};

/** The same in one line; null where there is nothing to say. */
export function costRemarks(remarks: readonly CostRemark[]): string | null {
  return together(remarks.map((one) => sentenceOf(COST_REMARKS, one)));
}

function itemWords({ item, unit, pricedBy }: UnpricedItem): string {
  if (pricedBy.length > 0) {
    return text.itemPricedBy({ item, unit: unit || text.pieces(), units: pricedBy });
  }
  return unit === "" ? item : text.itemIn({ item, unit });
}

const ROW_NAMES: Readonly<Record<CostRow["of"], (name: string) => string>> = {
  batch: (name) => name,
  method: (method) => text.allOf({ method }),
  "started plant": (method) => text.startedPlant({ method }),
};

/** Costs: a row a batch, and below it the sums of each method. */
export function costTable({ rows, remarks }: CostsSoFar): Answer {
  return tableOf({
    own: [headers().batch],
    columns: COST_COLUMNS,
    headers: headers(),
    rows: rows.map((row) => ({ own: [ROW_NAMES[row.of](row.name)], cells: row })),
    remark: together(remarks.map((one) => sentenceOf(COST_REMARKS, one))),
  });
}
