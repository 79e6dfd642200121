import { added, inLargerUnit, sumKey } from "../amounts";
import type { Kinds } from "../answer";
import type { CivilDay } from "../dates";
import { type DueQuestion, dueTasks } from "../due";
import { generalShares, type PassageAnyDay } from "../projection";
import { normalText, wordSet } from "../words";
import type { NeedsRemark } from "./work-remark";

/** The columns of a need's row. */
export const NEEDS_COLUMNS = {
  item: "text",
  amount: "number",
  unit: "text",
  firstNeeded: "day",
  neededFor: "text",
  variety: "text",
} as const satisfies Kinds;

/** What the tasks of one step ask of an item. */
export interface NeedingStep {
  readonly step: string;
  readonly batches: number;
  readonly plants: number;
}

export interface WorkNeed {
  readonly item: string;
  /** Of scion wood, since it is cut by variety; null where that is not known, and for all else. */
  readonly variety: string | null;
  /** Whole pieces, or a measure to hundredths. */
  readonly amount: number;
  /** Null for pieces. */
  readonly unit: string | null;
  /** The first day on which any of the tasks is to be done. */
  readonly firstNeeded: CivilDay;
  readonly steps: readonly NeedingStep[];
}

export interface WorkNeeds {
  readonly needs: readonly WorkNeed[];
  readonly remarks: readonly NeedsRemark[];
}

/** What is needed of an item; grows task by task. */
interface Sum {
  readonly item: string;
  readonly variety: string | null;
  readonly unit: string;
  amount: number;
  first: CivilDay;
  readonly steps: Map<string, { batches: number; plants: number }>;
}

const SCION_ITEMS = wordSet((words) => words.scionItems);

function isScion(item: string): boolean {
  const name = normalText(item);
  return SCION_ITEMS.has(name) || SCION_ITEMS.has(name.slice(name.lastIndexOf(" ") + 1));
}

/**
 * What the tasks of the due list need: needs per plant x plants likely to pass the step, summed by item,
 * scion wood by item and variety. Pieces are rounded up, measures to hundredths of the unit in which so
 * much is bought. First needed is the first "Do on" of those tasks. Tasks whose plants were never counted are
 * not in it, and a remark says how many.
 */
export function workNeeds(question: DueQuestion): WorkNeeds {
  const due = dueTasks(question);
  const tasks = due.rows.filter(({ step }) => step.needs.length > 0);
  const sums = new Map<string, Sum>();
  const ways: PassageAnyDay[] = [];
  let unknown = 0;
  for (const { step, variety, passing: plants, doOn, way } of tasks) {
    if (plants === null) {
      unknown += 1;
      continue;
    }
    if (plants === 0) continue;
    if (way !== null) ways.push(way);
    for (const { item, amount, unit } of step.needs) {
      const ofVariety = isScion(item) ? variety || null : null;
      const key = `${sumKey({ item, unit })}\n${ofVariety ?? ""}`;
      const sum = sums.get(key) ?? {
        item,
        unit,
        variety: ofVariety,
        amount: 0,
        first: doOn,
        steps: new Map(),
      };
      if (doOn < sum.first) sum.first = doOn;
      sum.amount = added(sum, { amount: amount * plants, unit });
      const of = sum.steps.get(step.name) ?? { batches: 0, plants: 0 };
      sum.steps.set(step.name, { batches: of.batches + 1, plants: of.plants + plants });
      sums.set(key, sum);
    }
  }
  // An item's varieties stand together.
  const items = [...new Set([...sums.values()].map(({ item }) => item))];
  const byItem = items.flatMap((item) => [...sums.values()].filter((sum) => sum.item === item));
  return {
    needs: byItem.map(({ first, steps, ...sum }) => {
      const { amount, unit } = inLargerUnit(sum);
      return {
        item: sum.item,
        variety: sum.variety,
        amount: unit === "" ? Math.ceil(amount - 1e-9) : Math.round(amount * 100) / 100,
        unit: unit || null,
        firstNeeded: first,
        steps: [...steps].map(([step, counts]) => ({ step, ...counts })),
      };
    }),
    remarks: [
      ...due.remarks.filter(({ code }) => code !== "care-today"),
      ...(unknown > 0 ? [{ code: "tasks-not-counted", tasks: unknown } as const] : []),
      ...generalShares(ways, due.forecaster),
    ],
  };
}
