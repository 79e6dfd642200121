import { shortened } from "../cells";
import { type CivilDay, isoDay } from "../dates";
import { type Batch, FACT_NAMES, likeName, type Records, type Trouble } from "../records";
import {
  batchMethods,
  hangsOn,
  type Method,
  type MethodUnread,
  type Timetable,
} from "../timetable";
import { batchDoubts } from "./batch-doubts";

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
  const methodOf = batchMethods(timetable);
  const doubts = batchDoubts(records, asOf);
  for (const batch of records.batches) {
    const key = likeName(batch.name);
    const first = firstOf.get(key);
    if (first === undefined) firstOf.set(key, batch);
    else troubles.push(sameName(batch, first));
    const reading = methodOf(batch);
    if (reading.code !== "method") troubles.push(noMethod(batch, reading, records));
    else {
      troubles.push(...alongTheSteps(batch, reading.method, records));
      doubts.see(batch, reading.method);
    }
    if (asOf !== null) troubles.push(...inTheFuture(batch, records, asOf));
  }
  return [...troubles, ...doubts.troubles()];
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

function noMethod(batch: Batch, reading: MethodUnread, records: Records): Trouble {
  const fact = batch.method === "" ? "crop" : "method";
  const column = records.columns.find(
    ({ target }) => target?.kind === "fact" && target.fact === fact,
  );
  const at = { row: batch.row, column: column?.header ?? FACT_NAMES[fact], found: batch[fact] };
  return reading.code === "no-such-method"
    ? { ...at, code: reading.code }
    : { ...at, code: reading.code, methods: reading.methods.map(({ name }) => shortened(name)) };
}

function alongTheSteps(batch: Batch, method: Method, records: Records): Trouble[] {
  const troubles: Trouble[] = [];
  const indexOf = (key: string) => records.stepKeys.indexOf(key);
  let counted: { name: string; count: number } | null = null;
  for (const step of method.steps) {
    const at = indexOf(step.key);
    if (at === -1) continue;
    const count = batch.counts[at] ?? null;
    if (step.counted && count !== null) {
      if (counted !== null && count > counted.count) {
        troubles.push({
          row: batch.row,
          column: headerOf(records, batch, { key: step.key, what: "count" }),
          found: String(count),
          code: "count-rises",
          before: counted.count,
          step: counted.name,
        });
      }
      counted = { name: step.name, count };
    }
    const before = hangsOn(method, step);
    const parent = before === null ? undefined : method.steps[before];
    if (parent === undefined) continue;
    const day = batch.days[at] ?? null;
    const stepDay = batch.days[indexOf(parent.key)] ?? null;
    // How soon it comes is known from the step alone that the days are counted from.
    const soonest = before === step.after ? step.from / 2 : 0;
    if (day === null || stepDay === null || day - stepDay >= soonest) continue;
    const column = headerOf(records, batch, { key: step.key, what: "day" });
    const days = day - stepDay;
    troubles.push({
      row: batch.row,
      column,
      found: isoDay(day),
      step: parent.name,
      ...(days < 0
        ? { code: "before-step" as const, stepDay }
        : { code: "too-soon" as const, days, fewest: step.from }),
    });
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
            column: headerOf(records, batch, { key: records.stepKeys[at] as string, what: "day" }),
            found: isoDay(day),
            code: "after-as-of" as const,
            asOf,
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
