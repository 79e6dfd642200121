import { shortened } from "../cells";
import { type CivilDay, isoDay, isoWeekday } from "../dates";
import { lazily } from "../lazily";
import { nearestNames } from "../names";
import { type Batch, FACT_NAMES, likeName, type Records, type Trouble } from "../records";
import { batchMethods, type MethodUnread, type Timetable } from "../timetable";
import { type BatchCells, batchCells, type CellFound } from "./batch-cells";
import { batchDoubts } from "./batch-doubts";
import { earlyDays, isInOrder, swappedDays } from "./days-in-order";
import { freeWeekdays } from "./free-weekdays";
import { listedCells } from "./listed-cells";
import { type PlacedStep, placedSteps } from "./placed-steps";

/**
 * Troubles that show only when the cells of a batch are held against each other: names used
 * twice, methods that the timetable lacks, counts that rise, days that run backwards, come sooner
 * than they can, lie in the future, or on a weekday on which nobody works.
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
  const methodOf = batchMethods(timetable);
  const stepsOf = placedSteps(records);
  const doubts = batchDoubts(records, asOf);
  const cells = batchCells(records);
  const dayAt = (batch: Batch, at: number) => stepCell(batch, at, { records, cells, what: "day" });
  const countAt = (batch: Batch, at: number) =>
    stepCell(batch, at, { records, cells, what: "count" });
  const free = freeWeekdays(records, asOf);
  const isListed = lazily(() => listedCells(records));
  /** The timetable's own, and as the nursery itself calls them where that is read. */
  const methodNames = lazily(() => {
    const names = new Set(timetable.methods.map(({ name }) => name));
    for (const batch of records.batches) {
      if (batch.method !== "" && methodOf(batch).code === "method") names.add(batch.method);
    }
    return [...names];
  });
  for (const batch of records.batches) {
    const key = likeName(batch.name);
    const first = firstOf.get(key);
    if (first === undefined) firstOf.set(key, batch);
    else troubles.push(sameName(batch, first));
    const reading = methodOf(batch);
    if (reading.code !== "method")
      troubles.push(noMethod(batch, reading, { records, methodNames }));
    else {
      const steps = stepsOf(reading.method);
      risingCounts(batch, steps, { countAt, troubles });
      if (!isInOrder(batch.days, steps)) {
        troubles.push(...daysOutOfOrder(batch, steps, { dayAt, asOf }));
      }
      doubts.see(batch, reading.method);
    }
    if (free.isAnyAhead || free.weekdays.size > 0) troubles.push(...oddDays(batch));
  }
  return [...troubles, ...doubts.troubles()];

  /** Days to come, and those on a weekday on which nobody works. */
  function oddDays(batch: Batch): readonly Trouble[] {
    return batch.days.flatMap((day, at): readonly Trouble[] => {
      if (day === null) return [];
      if (asOf !== null && day > asOf) {
        return [{ ...dayAt(batch, at), code: "after-as-of", asOf }];
      }
      const weekday = isoWeekday(day);
      if (!free.weekdays.has(weekday)) return [];
      const found = dayAt(batch, at);
      // A week or a month that is read as one of its days says nothing of the weekday.
      return isListed().has(`${found.row} ${found.column}`)
        ? []
        : [{ ...found, code: "free-weekday", weekday, others: free.others }];
    });
  }
}

function sameName(batch: Batch, first: Batch): Trouble {
  return {
    row: batch.row,
    column: FACT_NAMES.batch,
    found: batch.name,
    firstRow: first.row,
    ...(batch.name === first.name
      ? { code: "same-name" as const }
      : { code: "nearly-same-name" as const, name: first.name }),
  };
}

function noMethod(
  batch: Batch,
  reading: MethodUnread,
  { records, methodNames }: { readonly records: Records; readonly methodNames: () => string[] },
): Trouble {
  const fact = batch.method === "" ? "crop" : "method";
  const column = records.columns.find(
    ({ target }) => target?.kind === "fact" && target.fact === fact,
  );
  const found = batch[fact];
  const at = { row: batch.row, column: column?.header ?? FACT_NAMES[fact], found };
  if (reading.code === "several-methods") {
    const methods = reading.methods.map(({ name }) => shortened(name));
    return { ...at, code: reading.code, methods };
  }
  const [near = null] = nearestNames(found, methodNames());
  return { ...at, code: reading.code, near };
}

type CellOf = (batch: Batch, at: number) => CellFound;

function risingCounts(
  batch: Batch,
  steps: readonly PlacedStep[],
  { countAt, troubles }: { readonly countAt: CellOf; readonly troubles: Trouble[] },
): void {
  let before: PlacedStep | null = null;
  for (const one of steps) {
    const count = one.step.counted ? (batch.counts[one.at] ?? null) : null;
    if (count === null) continue;
    const least = before === null ? count : (batch.counts[before.at] as number);
    if (before !== null && count > least) {
      troubles.push({
        ...countAt(batch, one.at),
        code: "count-rises",
        before: least,
        step: before.step.name,
      });
    }
    before = one;
  }
}

function daysOutOfOrder(
  batch: Batch,
  steps: readonly PlacedStep[],
  { dayAt, asOf }: { readonly dayAt: CellOf; readonly asOf: CivilDay | null },
): readonly Trouble[] {
  const early = earlyDays(batch.days, steps);
  const swapped = swappedDays(batch.days, steps, { early, asOf });
  if (swapped.length > 0) {
    return swapped.map(({ at, day, fits, against, againstDay }) => ({
      ...dayAt(batch, at),
      code: "day-swapped" as const,
      day,
      fits,
      against: against.name,
      againstDay,
    }));
  }
  return early.map(({ at, step, day, above, aboveDay }) => ({
    ...dayAt(batch, at),
    step: above.name,
    ...(day < aboveDay
      ? { code: "before-step" as const, stepDay: aboveDay }
      : { code: "too-soon" as const, days: day - aboveDay, fewest: step.from }),
  }));
}

/** The cell that holds a batch's day of a step, or the plants counted at it. */
function stepCell(batch: Batch, at: number, { records, cells, what }: Where): CellFound {
  const key = records.stepKeys[at] as string;
  const cell = cells.cell(batch, `step ${key} ${what}`);
  const { row = batch.row, column = key } = cell ?? {};
  return {
    row,
    column,
    found: what === "day" ? isoDay(batch.days[at] as CivilDay) : String(batch.counts[at]),
  };
}

interface Where {
  readonly records: Records;
  readonly cells: BatchCells;
  readonly what: "day" | "count";
}
