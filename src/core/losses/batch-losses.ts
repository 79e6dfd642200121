import type { Kinds } from "../answer";
import { batchBalance, type LossStage } from "../balance";
import {
  type CostRemark,
  type PlantCost,
  type PricesReading,
  plantCost,
  plantCostRemarks,
} from "../costs";
import { madeOnce } from "../made-once";
import { type Batch, type LeftOut, leftOut, type Records } from "../records";
import { type GroupColumn, groupBatches, groupColumns } from "../takes";
import { methodFinder, type Timetable } from "../timetable";
import { normalText } from "../words";

/** The columns of a row of losses, behind those that groups are made of. */
export const LOSS_COLUMNS = {
  stage: "text",
  reason: "text",
  plants: "count",
  ofStarted: "share",
  cost: "number",
} as const satisfies Kinds;

/** Where plants of a group went: lost at a stage, or what else became of those that it started with. */
export type PlantsFate =
  | "started"
  | LossStage
  | "unexplained"
  | "given"
  | "dispatched"
  | "standing";

/** In the order in which a waterfall falls. */
const FATES: readonly PlantsFate[] = [
  "started",
  "not-come-up",
  "graded-out",
  "not-taken",
  "lost-later",
  "between",
  "unexplained",
  "given",
  "dispatched",
  "standing",
];

export interface LossRow {
  /** What stands in the columns, in their order; by reason the reason of plants culled, see `reason`. */
  readonly group: readonly string[];
  readonly stage: PlantsFate;
  /** The count that misses them, where it is a step that no stage is named after. */
  readonly step: string | null;
  /** Of plants written down as culled, empty where no reason is; null for all others. */
  readonly reason: string | null;
  /** 1 or more, but for what a group started with and for unexplained ones, of which there may be less than none. */
  readonly plants: number;
  /** Of those that the group started with, by reason all; null where there were none. */
  readonly ofStarted: number | null;
  /** What the plants lost had cost by then, in the money of the prices; null where that is not known. */
  readonly cost: number | null;
}

export interface BatchLosses {
  readonly by: readonly Pick<GroupColumn, "name" | "people">[];
  readonly isByReason: boolean;
  readonly rows: readonly LossRow[];
  /** Batches that are in no row, since their plants were never counted. */
  readonly notCounted: readonly string[];
  /** Batches whose method is not known, so that neither a count left out nor a cost can be told of them. */
  readonly withoutMethod: readonly string[];
  /** What could not be used of the records. */
  readonly leftOut: readonly LeftOut[];
  /** What is in no cost. */
  readonly remarks: readonly CostRemark[];
}

export interface LossesQuestion {
  readonly records: Records;
  /** A column of the records, or several joined with "+", or "Reason"; null for all batches together. */
  readonly by: string | null;
  readonly timetable: Timetable;
  readonly prices: PricesReading;
}

/** Plants of one fate and reason, and what they cost. */
interface Sum {
  readonly stage: PlantsFate;
  readonly step: string | null;
  /** Of the step, in its method. */
  at: number;
  readonly reason: string | null;
  plants: number;
  /** Null once the cost of a part is not known. */
  cost: number | null;
}

type Sums = Map<string, Sum>;

/**
 * Where plants were lost: of each group what it started with, then stage by stage what went, by reason where
 * that is written down, what was given away, dispatched and stands. Each plant is in one row, so that the
 * rows below the first add up to it.
 *
 * A plant lost has cost the needs and the work of the steps that it went through, see plantCost.
 *
 * @throws InputError "no-such-column"
 */
export function batchLosses({ records, by, timetable, prices }: LossesQuestion): BatchLosses {
  const isByReason = by !== null && namesReason(by, records);
  const columns = by === null || isByReason ? [] : groupColumns(by, records);
  const costs = new Map<string, PlantCost>();
  const addTo = fateAdder({ records, timetable, prices }, costs);
  const notCounted: string[] = [];
  const methodOf = methodFinder(timetable);
  const withoutMethod = records.batches.flatMap((batch) =>
    methodOf(batch) === null ? [batch.name] : [],
  );
  const rows = groupBatches(records.batches, columns).flatMap(({ values, batches }) => {
    const sums: Sums = new Map();
    for (const batch of batches) if (!addTo(sums, batch)) notCounted.push(batch.name);
    return rowsOf(values, sums);
  });
  return {
    by: isByReason ? [{ name: reasonHeader(records) ?? by ?? "", people: false }] : columns,
    isByReason,
    rows: isByReason ? byReason(rows) : rows,
    notCounted,
    leftOut: leftOut(records),
    withoutMethod,
    remarks: [...prices.troubles, ...plantCostRemarks([...costs.values()], prices)],
  };
}

function reasonHeader({ columns }: Records): string | null {
  const own = columns.find(
    ({ target }) => target?.kind === "event" && target.fact === "eventReason",
  );
  return own?.header ?? null;
}

/** Whether a log says of plants why they were culled. */
export function hasReasons({ batches }: Records): boolean {
  return batches.some(({ cullings }) => cullings?.some(({ reason }) => reason !== ""));
}

function namesReason(by: string, records: Records): boolean {
  const own = reasonHeader(records);
  const asked = normalText(by);
  return asked === "reason" || (own !== null && asked === normalText(own));
}

/** Adds the plants of a batch to the sums; says no where none of them were ever counted. */
function fateAdder(
  { records, timetable, prices }: Omit<LossesQuestion, "by">,
  costs: Map<string, PlantCost>,
) {
  const methodOf = methodFinder(timetable);
  return (sums: Sums, batch: Batch): boolean => {
    const method = methodOf(batch);
    const balance = batchBalance(batch, { stepKeys: records.stepKeys, method });
    if (balance === null) return false;
    const add = (stage: PlantsFate, plants: number, more: Partial<Sum> = {}) => {
      const { reason = null, cost = null, step = null, at = 0 } = more;
      const key = [stage, reason?.toLowerCase() ?? "\n", normalText(step ?? "")].join("\n");
      const sum = madeOnce(sums, key, () => ({ stage, step, at, reason, plants: 0, cost: 0 }));
      if (plants === 0) return;
      sum.at = Math.min(sum.at, at);
      sum.plants += plants;
      sum.cost = sum.cost === null || cost === null ? null : sum.cost + plants * cost;
    };
    add("started", balance.started);
    for (const { stage, by: step, through, lost, culled } of balance.losses) {
      const cost =
        method === null || through < 0
          ? null
          : madeOnce(costs, `${method.name}\n${through}`, () => plantCost(method, through, prices))
              .cost;
      const of = { cost, step, at: through };
      add(stage, lost, of);
      for (const { plants, reason } of culled) add(stage, plants, { ...of, reason });
    }
    add("unexplained", balance.unexplained);
    add("given", balance.given);
    add("dispatched", balance.dispatched);
    add("standing", balance.standing);
    return true;
  };
}

function rowsOf(group: readonly string[], sums: Sums): readonly LossRow[] {
  const started = [...sums.values()].find(({ stage }) => stage === "started")?.plants ?? 0;
  return [...sums.values()]
    .filter(({ stage, plants }) => plants !== 0 || stage === "started")
    .sort(
      (a, b) =>
        FATES.indexOf(a.stage) - FATES.indexOf(b.stage) ||
        // Steps of the nursery's own in their order, and last what is named after none.
        stepOrder(a) - stepOrder(b) ||
        compareText(a.step, b.step) ||
        b.plants - a.plants ||
        compareText(a.reason, b.reason),
    )
    .map(({ stage, step, reason, plants, cost }) => ({
      group,
      stage,
      step,
      reason,
      plants,
      ofStarted: started === 0 ? null : plants / started,
      cost: cost === null ? null : Math.round(cost * 100) / 100,
    }));
}

function stepOrder({ step, at }: Sum): number {
  return step === null ? Number.MAX_SAFE_INTEGER : at;
}

function compareText(one: string | null, other: string | null): number {
  const [a, b] = [one ?? "", other ?? ""];
  return a < b ? -1 : a > b ? 1 : 0;
}

/** Only what was lost, the largest loss by a reason first. */
function byReason(rows: readonly LossRow[]): readonly LossRow[] {
  const lost = rows.filter(({ stage }) => isLoss(stage));
  const sizes = new Map<string | null, number>();
  for (const { reason, plants } of lost) {
    sizes.set(reason, (sizes.get(reason) ?? 0) + plants);
  }
  // Those of which nobody wrote a reason come last: there is nothing to learn of them.
  const rank = ({ reason }: LossRow) =>
    reason === null ? -2 : reason === "" ? -1 : (sizes.get(reason) as number);
  return lost
    .map((row) => ({ ...row, group: [row.reason ?? ""] }))
    .sort((a, b) => rank(b) - rank(a) || ((a.reason ?? "") < (b.reason ?? "") ? -1 : 1));
}

/** Whether plants of a fate are gone without use. */
export function isLoss(stage: PlantsFate): boolean {
  return !["started", "given", "dispatched", "standing"].includes(stage);
}
