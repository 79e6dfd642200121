import { shortened } from "../cells/quoted";
import { stepKey } from "../words/step-key";
import { type Need, readNeeds } from "./needs";
import type { Method, Step, Timetable } from "./timetable";
import type { TimetableField } from "./timetable-columns";

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

/** Something in a timetable that makes it unusable. */
export interface TimetableFault {
  readonly row: number;
  readonly column: TimetableField;
  readonly found: string;
  /** A sentence without its full stop. */
  readonly trouble: string;
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
  for (const row of rows) {
    const key = row.method.toLowerCase();
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [row]);
    else group.push(row);
  }
  return [...groups.values()];
}

function checkWindows(group: readonly StepRow[], faults: TimetableFault[]): void {
  for (const row of group) {
    const report = (column: TimetableField, found: unknown, trouble: string) =>
      faults.push({ row: row.row, column, found: String(found), trouble });
    if (row.after !== "") {
      const { from, usual, by } = windowOf(row);
      if (usual === null) report("usual", "", `${shortened(row.step)} has no usual day`);
      else if (from === null || by === null || from > usual || usual > by) {
        report(
          "usual",
          `${from} / ${usual} / ${by}`,
          `the days of ${shortened(row.step)} must rise from From day to Usual day to By day`,
        );
      } else if (from < 0)
        report("from", from, `${shortened(row.step)} can't come before ${shortened(row.after)}`);
      else {
        const window = { from, usual, by } as const;
        for (const column of ["from", "usual", "by"] as const) {
          const days = window[column];
          if (!Number.isInteger(days)) {
            report(column, days, `the days of ${shortened(row.step)} must be whole days`);
          } else if (days > MOST_DAYS) {
            report(
              column,
              days,
              `${shortened(row.step)} can't take longer than ten years, ${MOST_DAYS} days`,
            );
          }
        }
      }
    }
    if (row.keptOf100 !== null && (row.keptOf100 <= 0 || row.keptOf100 > 100)) {
      report(
        "kept",
        row.keptOf100,
        `Kept of 100 at ${shortened(row.step)} must lie above 0 and at 100 or below`,
      );
    }
    if (row.perPersonHour !== null && row.perPersonHour <= 0) {
      report(
        "perPersonHour",
        row.perPersonHour,
        `Per person-hour at ${shortened(row.step)} must be above 0`,
      );
    }
    if (readNeeds(row.needs) === null) {
      report(
        "needs",
        row.needs,
        `the needs of ${shortened(row.step)} must read like "wrap strip 38 cm; bag 1"`,
      );
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
        trouble: `${shortened(row.step)} and ${shortened((group[other] as StepRow).step)} are the same step of ${shortened(row.method)}`,
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
      trouble: `After names ${shortened(row.after)}, which is no step of ${shortened(row.method)}`,
    });
    return null;
  });
  const circle = findCircle(parents);
  if (circle !== null) {
    const names = circle.map((index) => (group[index] as StepRow).step);
    const first = group[circle[0] as number] as StepRow;
    faults.push({
      row: first.row,
      column: "after",
      found: first.after,
      trouble: `After goes round in a circle: ${names.map(shortened).join(" after ")} after ${shortened(names[0] ?? "")}`,
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
