import { type Answer, type AnswerValue, columns } from "../answer";
import type { CivilDay } from "../dates/civil-day";
import { type DueQuestion, dueTasks, type Task } from "../due/due-tasks";
import { leftOutRemark } from "../records/records";

const COLUMNS = columns({
  Item: "text",
  Amount: "number",
  Unit: "text",
  "First needed": "day",
  For: "text",
});

/** What is needed of an item; grows task by task. */
interface Sum {
  readonly item: string;
  readonly unit: string;
  amount: number;
  first: CivilDay;
  readonly tasks: Task[];
}

/**
 * What the tasks of the due list need: needs per plant x plants standing, summed by item and unit.
 * Pieces are rounded up, measures to hundredths. First needed is the first "Do on" of those tasks.
 * Tasks whose plants were never counted are not in it, and the closing sentence says how many.
 */
export function workNeedsAnswer(question: DueQuestion): Answer {
  const tasks = dueTasks(question).filter(({ step }) => step.needs.length > 0);
  const counted = tasks.filter(({ plants }) => plants !== null);
  const sums = new Map<string, Sum>();
  for (const task of counted) {
    for (const { item, amount, unit } of task.step.needs) {
      const key = `${item.toLowerCase()}\n${unit}`;
      const sum = sums.get(key) ?? { item, unit, amount: 0, first: task.doOn, tasks: [] };
      if (task.doOn < sum.first) sum.first = task.doOn;
      sum.amount += amount * (task.plants as number);
      sum.tasks.push(task);
      sums.set(key, sum);
    }
  }
  const rows = [...sums.values()].map(({ item, unit, amount, first, tasks: of }): AnswerValue[] => [
    item,
    unit === "" ? Math.ceil(amount - 1e-9) : Math.round(amount * 100) / 100,
    unit || null,
    first,
    whatFor(of),
  ]);
  const unknown = tasks.length - counted.length;
  const uncounted =
    unknown === 0
      ? []
      : [`${unknown} ${unknown === 1 ? "task" : "tasks"} without a count of plants not in it`];
  const remarks = [leftOutRemark(question.records), ...uncounted].filter((one) => one !== null);
  return { columns: COLUMNS, rows, remark: remarks.join("; ") || null };
}

/** "Grafting (3 batches, 412 plants)". */
function whatFor(tasks: readonly Task[]): string {
  const names = [...new Set(tasks.map(({ step }) => step.name))];
  return names
    .map((name) => {
      const own = tasks.filter(({ step }) => step.name === name);
      const plants = own.reduce((sum, one) => sum + (one.plants ?? 0), 0);
      return `${name} (${own.length} ${own.length === 1 ? "batch" : "batches"}, ${plants} plants)`;
    })
    .join("; ");
}
