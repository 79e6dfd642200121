import type { CivilDay } from "../dates/civil-day";
import { sentenceDay } from "../dates/day-text";
import type { Batch } from "../records/batch";
import type { Records } from "../records/records";
import { COST, type Trouble } from "../records/trouble";
import { methodFinder } from "../timetable/method-of-batch";
import type { Method, Timetable } from "../timetable/timetable";

/**
 * Troubles that show only when the cells of a batch are held against each other: names used
 * twice, methods that the timetable lacks, counts that rise, days that run backwards or lie in
 * the future.
 *
 * @param asOf null when the question has no day; then no day is in the future
 */
export function batchTroubles(
  records: Records,
  timetable: Timetable,
  asOf: CivilDay | null,
): Trouble[] {
  const troubles: Trouble[] = [];
  const firstRowOf = new Map<string, number>();
  const methodOf = methodFinder(timetable);
  for (const batch of records.batches) {
    const key = batch.name.toLowerCase();
    const first = firstRowOf.get(key);
    if (first === undefined) firstRowOf.set(key, batch.row);
    else troubles.push(sameName(batch, first));
    const method = methodOf(batch);
    if (method === null) troubles.push(noMethod(batch, records));
    else troubles.push(...alongTheSteps(batch, method, records));
    if (asOf !== null) troubles.push(...inTheFuture(batch, records, asOf));
  }
  return troubles;
}

function sameName(batch: Batch, firstRow: number): Trouble {
  return {
    row: batch.row,
    column: "Batch",
    found: batch.name,
    trouble: `Row ${firstRow} has the same name`,
    whatHappens: "Both rows are used, each as a batch of its own",
    whatToDo: "Give each batch a name of its own",
    cost: COST.doubt,
  };
}

function noMethod(batch: Batch, records: Records): Trouble {
  const column = records.columns.find(
    ({ target }) => target?.kind === "fact" && target.fact === "method",
  );
  return {
    row: batch.row,
    column: column?.header ?? "Method",
    found: batch.method,
    trouble: "The timetable has no such method",
    whatHappens: "The batch gets no dates and no forecast",
    whatToDo: "Write the method as the timetable writes it, or add it to the timetable",
    cost: COST.cell,
  };
}

function alongTheSteps(batch: Batch, method: Method, records: Records): Trouble[] {
  const troubles: Trouble[] = [];
  const place = (key: string) => records.stepKeys.indexOf(key);
  let before: { name: string; count: number } | null = null;
  for (const step of method.steps) {
    const at = place(step.key);
    if (at === -1) continue;
    const count = batch.counts[at] ?? null;
    if (step.counted && count !== null) {
      if (before !== null && count > before.count) {
        troubles.push({
          row: batch.row,
          column: headerOf(records, step.key, "count"),
          found: String(count),
          trouble: `More plants than the ${before.count} at ${before.name}`,
          whatHappens: "Both counts are used as they stand",
          whatToDo: "Check both counts",
          cost: COST.doubt,
        });
      }
      before = { name: step.name, count };
    }
    const parent = step.after === null ? null : method.steps[step.after];
    const day = batch.days[at] ?? null;
    const earlier = parent ? (batch.days[place(parent.key)] ?? null) : null;
    if (parent && day !== null && earlier !== null && day < earlier) {
      troubles.push({
        row: batch.row,
        column: headerOf(records, step.key, "day"),
        found: sentenceDay(day),
        trouble: `Before ${parent.name} on ${sentenceDay(earlier)}`,
        whatHappens: "Both days are used as they stand",
        whatToDo: "Check both days",
        cost: COST.doubt,
      });
    }
  }
  return troubles;
}

function inTheFuture(batch: Batch, records: Records, asOf: CivilDay): Trouble[] {
  return batch.days.flatMap((day, at) =>
    day === null || day <= asOf
      ? []
      : [
          {
            row: batch.row,
            column: headerOf(records, records.stepKeys[at] as string, "day"),
            found: sentenceDay(day),
            trouble: `After the as-of day, ${sentenceDay(asOf)}`,
            whatHappens: "Read as planned, not as done",
            whatToDo: "Correct the day if it is a slip",
            cost: COST.doubt,
          },
        ],
  );
}

function headerOf(records: Records, key: string, what: "day" | "count"): string {
  const match = records.columns.find(
    ({ target }) => target?.kind === "step" && target.key === key && target.what === what,
  );
  return match?.header ?? key;
}
