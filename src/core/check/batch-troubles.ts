import { quoted, shortened } from "../cells/quoted";
import type { CivilDay } from "../dates/civil-day";
import { sentenceDay } from "../dates/day-text";
import type { Batch } from "../records/batch";
import { likeName } from "../records/batch-names";
import type { Records } from "../records/records";
import { COST, type Trouble } from "../records/trouble";
import { methodFinder } from "../timetable/method-of-batch";
import type { Method, Step, Timetable } from "../timetable/timetable";

/**
 * Troubles that show only when the cells of a batch are held against each other: names used
 * twice, methods that the timetable lacks, counts that rise, days that run backwards, come sooner
 * than they can, or lie in the future.
 *
 * @param asOf null when the question has no day; then no day is in the future
 */
export function batchTroubles(
  records: Records,
  timetable: Timetable,
  asOf: CivilDay | null,
): Trouble[] {
  const troubles: Trouble[] = [];
  const firstOf = new Map<string, Batch>();
  const methodOf = methodFinder(timetable);
  for (const batch of records.batches) {
    const key = likeName(batch.name);
    const first = firstOf.get(key);
    if (first === undefined) firstOf.set(key, batch);
    else troubles.push(sameName(batch, first));
    const method = methodOf(batch);
    if (method === null) troubles.push(noMethod(batch, records));
    else troubles.push(...alongTheSteps(batch, method, records));
    if (asOf !== null) troubles.push(...inTheFuture(batch, records, asOf));
  }
  return troubles;
}

function sameName(batch: Batch, first: Batch): Trouble {
  const same = batch.name === first.name;
  return {
    row: batch.row,
    column: "Batch",
    found: batch.name,
    trouble: same
      ? `Row ${first.row} has the same name`
      : `Nearly the same name as ${quoted(first.name)} in row ${first.row}`,
    whatHappens: "Both rows are used, each as a batch of its own",
    whatToDo: "Give each batch a name that can't be mistaken",
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
  const indexOf = (key: string) => records.stepKeys.indexOf(key);
  let before: { name: string; count: number } | null = null;
  for (const step of method.steps) {
    const at = indexOf(step.key);
    if (at === -1) continue;
    const count = batch.counts[at] ?? null;
    if (step.counted && count !== null) {
      if (before !== null && count > before.count) {
        troubles.push({
          row: batch.row,
          column: headerOf(records, batch, { key: step.key, what: "count" }),
          found: String(count),
          trouble: `More plants than the ${before.count} at ${shortened(before.name)}`,
          whatHappens: "Both counts are used as they stand",
          whatToDo: "Check both counts",
          cost: COST.doubt,
        });
      }
      before = { name: step.name, count };
    }
    const parent = step.after === null ? undefined : method.steps[step.after];
    if (parent === undefined) continue;
    const trouble = tooSoon({
      step,
      parent,
      day: batch.days[at] ?? null,
      earlier: batch.days[indexOf(parent.key)],
    });
    if (trouble !== null) {
      troubles.push({
        row: batch.row,
        column: headerOf(records, batch, { key: step.key, what: "day" }),
        ...trouble,
      });
    }
  }
  return troubles;
}

/** A day before the step it is counted from, or within half of the timetable's earliest. */
function tooSoon({
  step,
  parent,
  day,
  earlier,
}: {
  readonly step: Step;
  readonly parent: Step;
  readonly day: CivilDay | null;
  readonly earlier: CivilDay | null | undefined;
}): Omit<Trouble, "row" | "column"> | null {
  if (day === null || earlier == null) return null;
  const days = day - earlier;
  if (days >= step.from / 2) return null;
  return {
    found: sentenceDay(day),
    trouble:
      days < 0
        ? `Before ${shortened(parent.name)} on ${sentenceDay(earlier)}`
        : `${days} days after ${shortened(parent.name)}, where ${step.from} is the least by the timetable`,
    whatHappens: "Both days are used as they stand",
    whatToDo: "Check both days",
    cost: COST.doubt,
  };
}

function inTheFuture(batch: Batch, records: Records, asOf: CivilDay): Trouble[] {
  return batch.days.flatMap((day, at) =>
    day === null || day <= asOf
      ? []
      : [
          {
            row: batch.row,
            column: headerOf(records, batch, { key: records.stepKeys[at] as string, what: "day" }),
            found: sentenceDay(day),
            trouble: `After the as-of day, ${sentenceDay(asOf)}`,
            whatHappens: "Read as planned, not as done",
            whatToDo: "Correct the day if it is a slip",
            cost: COST.doubt,
          },
        ],
  );
}

function headerOf(
  records: Records,
  batch: Batch,
  { key, what }: { readonly key: string; readonly what: "day" | "count" },
): string {
  const match = records.columns.find(
    ({ table, target }) =>
      table === batch.table &&
      target?.kind === "step" &&
      target.key === key &&
      target.what === what,
  );
  return match?.header ?? key;
}
