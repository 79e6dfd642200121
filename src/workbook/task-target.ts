import type { CivilDay } from "../core";
import type { RecordsNow } from "./records-tab";

/** A cell of the records tab; rows and columns from 1. */
export interface Place {
  readonly row: number;
  readonly column: number;
  readonly header: string;
}

/** Where a task of a batch is recorded, and what it has to agree with. */
export interface Target {
  readonly stepName: string;
  /** The cell with the batch's name; null for a new line of a log. */
  readonly name: Place | null;
  /** Row of the header, from 1. */
  readonly headerRow: number;
  readonly day: Place | null;
  readonly count: Place | null;
  readonly person: Place | null;
  readonly note: Place | null;
  /** Further cells of a new line in a log. */
  readonly alsoWrite: readonly { readonly place: Place; readonly text: string }[];
  /** The count before, which this one can't exceed. */
  readonly before: { readonly name: string; readonly count: number } | null;
  /** The step that this one comes after. */
  readonly earlierDay: { readonly name: string; readonly day: CivilDay } | null;
}

/**
 * Finds where a task is recorded: the batch's own row in a table of batches; a new line below a log.
 *
 * @throws Error when the batch or the task is not there, or two batches bear the name
 */
export function taskTarget(now: RecordsNow, batchName: string, task: string): Target {
  const { records, timetable } = now;
  const named = records.batches.filter(({ name }) => name === batchName);
  const batch = named[0];
  if (batch === undefined) {
    throw new Error(`There is no batch "${batchName}" in the records any more: look again`);
  }
  if (named.length > 1) {
    throw new Error(
      `Two batches are called "${batchName}" (rows ${named.map(({ row }) => row).join(" and ")}): give them names of their own first`,
    );
  }
  const method = timetable.methods.find(({ steps }) => steps.some(({ name }) => name === task));
  const step = method?.steps.find(({ name }) => name === task);
  if (method === undefined || step === undefined) {
    throw new Error(`The timetable has no step "${task}" any more: look again`);
  }
  const place = records.stepKeys.indexOf(step.key);
  const countsBefore = method.steps
    .slice(0, method.steps.indexOf(step))
    .map(({ name, key }) => ({ name, count: batch.counts[records.stepKeys.indexOf(key)] ?? null }))
    .filter((one): one is { name: string; count: number } => one.count !== null);
  const parent = step.after === null ? undefined : method.steps[step.after];
  const parentDay =
    parent === undefined ? null : (batch.days[records.stepKeys.indexOf(parent.key)] ?? null);
  const shared = {
    stepName: step.name,
    headerRow: records.firstHeader,
    before: countsBefore[countsBefore.length - 1] ?? null,
    earlierDay:
      parent === undefined || parentDay === null ? null : { name: parent.name, day: parentDay },
  };
  const columnFor = (key: string) => columnOf(now, batch.table, key);
  const ownRow = (key: string): Place | null => {
    const found = columnFor(key);
    return found === null ? null : { row: batch.row, ...found };
  };
  if (place !== -1 && (columnFor(`step ${step.key} day`) ?? columnFor(`step ${step.key} count`))) {
    return {
      ...shared,
      name: ownRow("fact batch"),
      day: ownRow(`step ${step.key} day`),
      count: ownRow(`step ${step.key} count`),
      person: step.key === "grafting" ? ownRow("fact grafter") : null,
      note: ownRow("fact note"),
      alsoWrite: [],
    };
  }
  return logLine(now, batch.name, step.name, shared);
}

function logLine(
  now: RecordsNow,
  batch: string,
  step: string,
  shared: Pick<Target, "stepName" | "headerRow" | "before" | "earlierDay">,
): Target {
  const log = now.records.columns.find(
    ({ target }) => target?.kind === "event" && target.fact === "eventStep",
  );
  const row = now.values.length + 1;
  const newLine = (key: string): Place | null => {
    const found = log === undefined ? null : columnOf(now, log.table, key);
    return found === null ? null : { row, ...found };
  };
  const named = [
    { place: newLine("fact batch"), text: batch },
    { place: newLine("event eventStep"), text: step },
  ];
  return {
    ...shared,
    name: null,
    day: newLine("event eventDay"),
    count: newLine("event eventCount"),
    person: newLine("event eventPerson"),
    note: newLine("fact note"),
    alsoWrite: named.flatMap(({ place, text }) => (place === null ? [] : [{ place, text }])),
  };
}

function columnOf(
  { records }: RecordsNow,
  table: number,
  key: string,
): { column: number; header: string } | null {
  const match = records.columns.find(({ target, table: of }) => {
    if (target === null || of !== table) return false;
    const own =
      target.kind === "step"
        ? `step ${target.key} ${target.what}`
        : `${target.kind} ${target.fact}`;
    return own === key;
  });
  return match === undefined ? null : { column: match.column + 1, header: match.header };
}
