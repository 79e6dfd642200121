import type { TimetableFault } from "../faults";
import { madeOnce } from "../made-once";
import { stepKey, type TimetableField } from "../words";
import { type Need, readNeeds } from "./needs";
import type { Method, Step, Timetable } from "./timetable";

/** One row of a timetable, its cells read but not yet held against each other. */
export interface StepRow {
  /** Row in the table it came from, for messages; from 1. */
  readonly row: number;
  readonly method: string;
  readonly step: string;
  readonly after: string;
  readonly from: number | null;
  readonly usual: number | null;
  readonly by: number | null;
  readonly counted: boolean;
  readonly keptOf100: number | null;
  readonly perPersonHour: number | null;
  readonly needs: string;
  readonly caution: string;
  readonly source: string;
}

export interface BuiltTimetable {
  readonly timetable: Timetable;
  readonly faults: readonly TimetableFault[];
}

/** Ten years: more is a slip, and would make forecasts of millions of days. */
const MOST_DAYS = 3660;

/**
 * Holds the rows of a timetable against each other and puts each method's steps in order: a step
 * stands behind the one it is counted from, and earlier usual days come first.
 *
 * Method: depth-first search along After for circles; then a stable sort by usual days from the
 *   start, which can't put a step before the one it is counted from since days are never negative.
 */
export function buildMethods(rows: readonly StepRow[]): BuiltTimetable {
  const faults: TimetableFault[] = [];
  const methods: Method[] = [];
  for (const group of groupByMethod(rows)) {
    const before = faults.length;
    checkWindows(group, faults);
    const parents = checkAfter(group, faults);
    if (faults.length === before) methods.push(orderSteps(group, parents));
  }
  return { timetable: { methods }, faults };
}

function groupByMethod(rows: readonly StepRow[]): StepRow[][] {
  const groups = new Map<string, StepRow[]>();
  for (const row of rows) madeOnce(groups, row.method.toLowerCase(), () => []).push(row);
  return [...groups.values()];
}

function checkWindows(group: readonly StepRow[], faults: TimetableFault[]): void {
  for (const row of group) {
    const { step } = row;
    const at = (column: TimetableField, found: unknown) => ({
      row: row.row,
      column,
      found: String(found),
    });
    if (row.after !== "") {
      const { from, usual, by } = windowOf(row);
      if (usual === null) faults.push({ ...at("usual", ""), code: "no-usual-day", step });
      else if (from === null || by === null || from > usual || usual > by) {
        faults.push({
          ...at("usual", `${from} / ${usual} / ${by}`),
          code: "days-must-rise",
          step,
        });
      } else if (from < 0) {
        faults.push({ ...at("from", from), code: "before-parent", step, after: row.after });
      } else {
        const window = { from, usual, by } as const;
        for (const column of ["from", "usual", "by"] as const) {
          const days = window[column];
          if (!Number.isInteger(days)) {
            faults.push({ ...at(column, days), code: "days-not-whole", step });
          } else if (days > MOST_DAYS) {
            faults.push({ ...at(column, days), code: "too-many-days", step, most: MOST_DAYS });
          }
        }
      }
    }
    if (row.keptOf100 !== null && (row.keptOf100 <= 0 || row.keptOf100 > 100)) {
      faults.push({ ...at("kept", row.keptOf100), code: "kept-out-of-range", step });
    }
    if (row.perPersonHour !== null && row.perPersonHour <= 0) {
      faults.push({ ...at("perPersonHour", row.perPersonHour), code: "rate-not-above-0", step });
    }
    if (readNeeds(row.needs) === null) {
      faults.push({ ...at("needs", row.needs), code: "needs-unreadable", step });
    }
  }
}

/** The index in the group of the step that each is counted from; null for a first step. */
function checkAfter(group: readonly StepRow[], faults: TimetableFault[]): (number | null)[] {
  const indexByKey = new Map<string, number>();
  group.forEach((row, index) => {
    const key = stepKey(row.step);
    const other = indexByKey.get(key);
    if (other === undefined) indexByKey.set(key, index);
    else {
      faults.push({
        row: row.row,
        column: "step",
        found: row.step,
        step: row.step,
        code: "same-step",
        other: (group[other] as StepRow).step,
        method: row.method,
      });
    }
  });
  const parents = group.map((row) => {
    if (row.after === "") return null;
    const index = indexByKey.get(stepKey(row.after));
    if (index !== undefined) return index;
    faults.push({
      row: row.row,
      column: "after",
      found: row.after,
      code: "no-such-step",
      after: row.after,
      method: row.method,
    });
    return null;
  });
  const circle = findCircle(parents);
  if (circle !== null) {
    const steps = circle.map((index) => (group[index] as StepRow).step);
    const first = group[circle[0] as number] as StepRow;
    faults.push({
      row: first.row,
      column: "after",
      found: first.after,
      code: "circle",
      steps,
    });
  }
  return parents;
}

/** Indexes along a circle of parents, or null. */
function findCircle(parents: readonly (number | null)[]): number[] | null {
  for (let start = 0; start < parents.length; start += 1) {
    const path: number[] = [];
    let index: number | null = start;
    while (index !== null && !path.includes(index)) {
      path.push(index);
      index = parents[index] ?? null;
    }
    if (index !== null) return path.slice(path.indexOf(index));
  }
  return null;
}

function orderSteps(group: readonly StepRow[], parents: readonly (number | null)[]): Method {
  const fromStart = (at: number): number => {
    const parent = parents[at] ?? null;
    return parent === null ? 0 : fromStart(parent) + (windowOf(group[at] as StepRow).usual ?? 0);
  };
  const depth = (at: number): number => {
    const parent = parents[at] ?? null;
    return parent === null ? 0 : depth(parent) + 1;
  };
  const order = group
    .map((_, at) => at)
    .sort((a, b) => fromStart(a) - fromStart(b) || depth(a) - depth(b) || a - b);
  const newIndex = new Map(order.map((at, index) => [at, index]));
  const steps = order.map((at): Step => {
    const row = group[at] as StepRow;
    const parent = parents[at] ?? null;
    const { from, usual, by } = windowOf(row);
    return {
      name: row.step,
      key: stepKey(row.step),
      after: parent === null ? null : (newIndex.get(parent) as number),
      from: parent === null ? 0 : (from as number),
      usual: parent === null ? 0 : (usual as number),
      by: parent === null ? 0 : (by as number),
      counted: row.counted,
      kept: row.counted && row.keptOf100 !== null ? row.keptOf100 / 100 : null,
      perPersonHour: row.perPersonHour,
      needs: readNeeds(row.needs) as readonly Need[],
      caution: row.caution,
      source: row.source,
    };
  });
  const ready = steps.findIndex((step) => step.key === "ready");
  return {
    name: (group[0] as StepRow).method,
    steps,
    ready: ready === -1 ? steps.length - 1 : ready,
  };
}

/** A window with what was left out filled in: one side from the usual day, the usual day between the two. */
function windowOf(row: StepRow): Pick<StepRow, "from" | "usual" | "by"> {
  const usual =
    row.usual ??
    (row.from !== null && row.by !== null
      ? Math.round((row.from + row.by) / 2)
      : (row.from ?? row.by));
  return { from: row.from ?? usual, usual, by: row.by ?? usual };
}
