import { type CivilDay, hangsOn, methodFinder, recordedSteps, type TargetKey } from "../../core";
import { WritingError } from "../host/writing-error";
import type { RecordsNow } from "../reading/records-tab";
import { columnReadAs, type TableCell } from "../reading/table-columns";
import { logTarget } from "./log-target";
import type { TaskCells, TaskTarget } from "./task-cells";

type Batch = RecordsNow["records"]["batches"][number];
type Method = NonNullable<ReturnType<ReturnType<typeof methodFinder>>>;

/**
 * Finds where a task is recorded: the batch's own row in a table of batches; in a log the line of that
 * day, or a new line below.
 *
 * @param day the day that is meant; null for the one that stands there
 * @param notDone whether it is to be said that it is not to be done
 * @throws Error when the batch or the task is not there, or two batches bear the name
 */
export function taskTarget(
  now: RecordsNow,
  {
    batchName,
    task,
    day,
    notDone,
  }: {
    readonly batchName: string;
    readonly task: string;
    readonly day: CivilDay | null;
    readonly notDone: boolean;
  },
): TaskTarget {
  const { records, timetable } = now;
  const batch = batchNamed(now, batchName);
  const has = (method: Method | null): boolean =>
    method !== null && recordedSteps(method).some(({ name }) => name === task);
  const own = methodFinder(timetable)(batch);
  const method = has(own) ? own : timetable.methods.find(has);
  const step = method ? recordedSteps(method).find(({ name }) => name === task) : undefined;
  if (!method || step === undefined) {
    throw new WritingError({ code: "noStep", task });
  }
  const dayOf = (key: string) => batch.days[records.stepKeys.indexOf(key)] ?? null;
  const countOf = (key: string) => batch.counts[records.stepKeys.indexOf(key)] ?? null;
  const countsBefore = method.steps
    .slice(0, placeOf(method, step))
    .map(({ name, key }) => ({ name, count: countOf(key) }))
    .filter((one): one is { name: string; count: number } => one.count !== null);
  const recordedDay = dayOf(step.key);
  return {
    stepName: step.name,
    stepKey: step.key,
    counted: step.counted,
    recordedDay,
    recordedCount: countOf(step.key),
    before: countsBefore[countsBefore.length - 1] ?? null,
    earlierDay: earlierDay(method, step, dayOf),
    ...(ownRow(now, batch, step.key) ??
      logTarget(now, {
        batch: batch.name,
        step,
        // A line that says so has no day.
        day: notDone ? null : (day ?? recordedDay),
      })),
  };
}

/** Where a step stands among those that are passed: work ahead stands just before the step it is done for. */
function placeOf({ steps }: Method, step: Method["steps"][number]): number {
  const at = steps.indexOf(step);
  return at === -1 ? (step.after ?? 0) : at;
}

/** @throws Error when there is none of that name, or more than one */
function batchNamed({ records }: RecordsNow, name: string): Batch {
  const named = records.batches.filter((batch) => batch.name === name);
  const batch = named[0];
  if (batch === undefined) {
    throw new WritingError({ code: "noBatch", batch: name });
  }
  if (named.length > 1) {
    throw new WritingError({
      code: "twoBatches",
      batch: name,
      rows: named.map(({ row }) => String(row)),
    });
  }
  return batch;
}

/** Up along the steps that each hangs on, to the first whose day is known. */
function earlierDay(
  method: Method,
  of: Method["steps"][number],
  dayOf: (key: string) => CivilDay | null,
): TaskTarget["earlierDay"] {
  // Work ahead of a step is done before it; nothing is known of what it waits for.
  for (let index = of.from < 0 ? null : hangsOn(method, of); index !== null; ) {
    const step = method.steps[index];
    if (step === undefined) return null;
    const day = dayOf(step.key);
    if (day !== null) return { name: step.name, day };
    index = hangsOn(method, step);
  }
  return null;
}

/** The batch's own row, where its table has a column for the step. */
function ownRow({ records }: RecordsNow, batch: Batch, key: string): TaskCells | null {
  const cellOf = (wanted: TargetKey): TableCell | null => {
    const found = columnReadAs(records, batch.table, wanted);
    return found === null ? null : { row: batch.row, ...found };
  };
  const day = cellOf(`step ${key} day`);
  const count = cellOf(`step ${key} count`);
  if (day === null && count === null) return null;
  return {
    table: batch.table,
    name: cellOf("fact batch"),
    day,
    count,
    note: cellOf("fact note"),
    person: key === "grafting" ? cellOf("fact grafter") : null,
    alsoWrite: [],
    secondLine: null,
  };
}
