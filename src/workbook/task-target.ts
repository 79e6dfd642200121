import { type CivilDay, methodFinder } from "../core";
import type { LineAlready } from "../wording/writing-codes";
import { logTarget } from "./log-target";
import type { RecordsNow } from "./records-tab";
import { columnReadAs, type TableCell } from "./table-columns";
import { WritingError } from "./writing-error";

type Batch = RecordsNow["records"]["batches"][number];
type Method = NonNullable<ReturnType<ReturnType<typeof methodFinder>>>;

/** Where a task of a batch is recorded, and what it has to agree with. */
export interface TaskTarget extends TaskCells {
  readonly stepName: string;
  readonly stepKey: string;
  readonly counted: boolean;
  /** The day and the count that the records have for it; null where they have none. */
  readonly recordedDay: CivilDay | null;
  readonly recordedCount: number | null;
  /** The count before, which this one can't exceed. */
  readonly before: { readonly name: string; readonly count: number } | null;
  /** The last step before it, of those that it comes after, of which the day is known. */
  readonly earlierDay: { readonly name: string; readonly day: CivilDay } | null;
}

/** The cells in which a task is recorded; null where the table has none. */
export interface TaskCells {
  /** The table's number, see Records.tables. */
  readonly table: number;
  /** The cell with the batch's name; null for a new line of a log. */
  readonly name: TableCell | null;
  readonly day: TableCell | null;
  readonly count: TableCell | null;
  readonly person: TableCell | null;
  readonly note: TableCell | null;
  /** Further cells of a new line in a log. */
  readonly alsoWrite: readonly { readonly at: TableCell; readonly text: string }[];
  /** What has to be asked before a further line is written for the same job; null when nothing. */
  readonly secondLine: LineAlready | null;
}

/**
 * Finds where a task is recorded: the batch's own row in a table of batches; in a log the line of that
 * day, or a new line below.
 *
 * @param day the day that is meant; null for the one that stands there
 * @throws Error when the batch or the task is not there, or two batches bear the name
 */
export function taskTarget(
  now: RecordsNow,
  {
    batchName,
    task,
    day,
  }: { readonly batchName: string; readonly task: string; readonly day: CivilDay | null },
): TaskTarget {
  const { records, timetable } = now;
  const batch = batchNamed(now, batchName);
  const has = (method: Method | null): boolean =>
    method?.steps.some(({ name }) => name === task) ?? false;
  const own = methodFinder(timetable)(batch);
  const method = has(own) ? own : timetable.methods.find(has);
  const step = method?.steps.find(({ name }) => name === task);
  if (!method || step === undefined) {
    throw new WritingError({ code: "noStep", task });
  }
  const dayOf = (key: string) => batch.days[records.stepKeys.indexOf(key)] ?? null;
  const countOf = (key: string) => batch.counts[records.stepKeys.indexOf(key)] ?? null;
  const countsBefore = method.steps
    .slice(0, method.steps.indexOf(step))
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
    earlierDay: earlierDay(method, step.after, dayOf),
    ...(ownRow(now, batch, step.key) ??
      logTarget(now, { batch: batch.name, step, day: day ?? recordedDay })),
  };
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

/** Up along the steps that each is counted from, to the first whose day is known. */
function earlierDay(
  method: Method,
  after: number | null,
  dayOf: (key: string) => CivilDay | null,
): TaskTarget["earlierDay"] {
  for (let index = after; index !== null; ) {
    const step = method.steps[index];
    if (step === undefined) return null;
    const day = dayOf(step.key);
    if (day !== null) return { name: step.name, day };
    index = step.after;
  }
  return null;
}

/** The batch's own row, where its table has a column for the step. */
function ownRow({ records }: RecordsNow, batch: Batch, key: string): TaskCells | null {
  const cellOf = (wanted: string): TableCell | null => {
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
