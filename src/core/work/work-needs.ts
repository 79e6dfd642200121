import { added, inLargerUnit, sumKey } from "../amounts";
import type { Kinds } from "../answer";
import type { CivilDay } from "../dates";
import { type DueQuestion, dueTasks } from "../due";
import type { NeedsRemark } from "./work-remark";

/** The columns of a need's row. */
export const NEEDS_COLUMNS = {
  item: "text",
  amount: "number",
  unit: "text",
  firstNeeded: "day",
  neededFor: "text",
} as const satisfies Kinds;

/** What the tasks of one step ask of an item. */
export interface NeedingStep {
  readonly step: string;
  readonly batches: number;
  readonly plants: number;
}

export interface WorkNeed {
  readonly item: string;
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
  readonly unit: string;
  amount: number;
  first: CivilDay;
  readonly steps: Map<string, { batches: number; plants: number }>;
}

/**
 * What the tasks of the due list need: needs per plant x plants standing, summed by item. Pieces
 * are rounded up, measures to hundredths of the unit in which so much is bought. First needed is the first "Do on" of those tasks.
 * Tasks whose plants were never counted are not in it, and a remark says how many.
 */
export function workNeeds(question: DueQuestion): WorkNeeds {
  const due = dueTasks(question);
  const tasks = due.rows.filter(({ step }) => step.needs.length > 0);
  const sums = new Map<string, Sum>();
  let unknown = 0;
  for (const { step, plants, doOn } of tasks) {
    if (plants === null) {
      unknown += 1;
      continue;
    }
    for (const { item, amount, unit } of step.needs) {
      const key = sumKey({ item, unit });
      const sum = sums.get(key) ?? { item, unit, amount: 0, first: doOn, steps: new Map() };
      if (doOn < sum.first) sum.first = doOn;
      sum.amount = added(sum, { amount: amount * plants, unit });
      const of = sum.steps.get(step.name) ?? { batches: 0, plants: 0 };
      sum.steps.set(step.name, { batches: of.batches + 1, plants: of.plants + plants });
      sums.set(key, sum);
    }
  }
  return {
    needs: [...sums.values()].map(({ first, steps, ...sum }) => {
      const { item, amount, unit } = inLargerUnit(sum);
      return {
        item,
        amount: unit === "" ? Math.ceil(amount - 1e-9) : Math.round(amount * 100) / 100,
        unit: unit || null,
        firstNeeded: first,
        steps: [...steps].map(([step, counts]) => ({ step, ...counts })),
      };
    }),
    remarks: [
      ...due.remarks,
      ...(unknown > 0 ? [{ code: "tasks-not-counted", tasks: unknown } as const] : []),
    ],
  };
}
