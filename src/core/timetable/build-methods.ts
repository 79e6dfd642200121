import type { TimetableFault } from "../faults";
import { madeOnce } from "../made-once";
import { stepKey } from "../words";
import { countedFromBeside, isAhead, isPassed } from "./beside-steps";
import { type Need, readNeeds } from "./needs";
import {
  circleIn,
  type FoundFault,
  faultsOfRow,
  isOfCellAlone,
  isOfDays,
  noSuchSteps,
  sameSteps,
} from "./step-faults";
import { kindIn, usualKind } from "./step-kind";
import { type StepRow, windowOf } from "./step-row";
import type { LostMethod, Method, Step, Timetable } from "./timetable";

export interface BuiltTimetable {
  readonly timetable: Timetable;
  readonly faults: readonly TimetableFault[];
}

/**
 * Holds the rows of a timetable against each other and puts each method's steps in order: a step
 * stands behind the one it is counted from, and earlier usual days come first.
 *
 * What can't be used is left out, and the rest is used: a share, a rate or needs alone; a row with the
 * days of its step, and the rows that are counted from it. A method that loses the step at which plants
 * are ready is left out whole, since nothing could be forecast but too early.
 *
 * Method: depth-first search along After for circles; then a stable sort by usual days from the
 *   start, which can't put a step before the one it is counted from: work ahead of a step, whose days
 *   are below 0, stands in a list of its own.
 *
 * @param unread what could not be read of the cells of these rows, and of rows that are not among them
 */
export function buildMethods(
  rows: readonly StepRow[],
  unread: readonly FoundFault[] = [],
): BuiltTimetable {
  const methods: Method[] = [];
  const lost: LostMethod[] = [];
  const named = new Set(rows.map(({ row }) => row));
  const faults: TimetableFault[] = unread
    .filter(({ row }) => !named.has(row))
    .map((fault) => ({ ...fault, leftOut: "row" }));
  for (const group of groupByMethod(rows)) {
    const { usable, found } = usableRows(group, unread);
    const used = new Set(usable.map(({ row }) => row));
    const ready = readyRow(group).row;
    const isLost = !usable.some(({ row }) => row === ready);
    if (isLost) lost.push({ name: (group[0] as StepRow).method, before: methods.length });
    else methods.push(orderSteps(usable));
    for (const fault of found) {
      const ofRow = used.has(fault.row) && isOfCellAlone(fault) ? "cell" : "row";
      faults.push({ ...fault, leftOut: isLost ? "method" : ofRow });
    }
  }
  faults.sort((one, other) => one.row - other.row);
  if (faults.length === 0) return { timetable: { methods }, faults };
  return { timetable: { methods, leftOut: { faults, lost } }, faults };
}

function groupByMethod(rows: readonly StepRow[]): StepRow[][] {
  const groups = new Map<string, StepRow[]>();
  for (const row of rows) madeOnce(groups, row.method.toLowerCase(), () => []).push(row);
  return [...groups.values()];
}

/** The row of the step at which plants are ready; see Method. */
function readyRow(group: readonly StepRow[]): StepRow {
  const passed = group.filter(isPassed);
  return (passed.find(({ step }) => stepKey(step) === "ready") ??
    passed[passed.length - 1] ??
    group[0]) as StepRow;
}

/** The rows of a method that can be used, without the cells that can't; and what is wrong. */
function usableRows(
  group: readonly StepRow[],
  unread: readonly FoundFault[],
): { readonly usable: readonly StepRow[]; readonly found: readonly FoundFault[] } {
  const found: FoundFault[] = [];
  const out = new Set<StepRow>();
  const at = new Map(group.map((row) => [row.row, row]));
  const add = (faults: readonly FoundFault[]) => {
    for (const fault of faults) {
      found.push(fault);
      if (!isOfCellAlone(fault)) out.add(at.get(fault.row) as StepRow);
    }
  };
  const left = () => group.filter((row) => !out.has(row));
  add(unread.filter(({ row }) => at.has(row)));
  for (const row of group) {
    for (const fault of faultsOfRow(row)) {
      const isSaid = unread.some((one) => one.row === row.row && isOfDays(one));
      if (fault.code === "no-usual-day" && isSaid) out.add(row);
      else add([fault]);
    }
  }
  add(sameSteps(group));
  // A step that is there but left out is no step that is not there.
  add(noSuchSteps(group, "after"));
  add(noSuchSteps(group, "until"));
  add(countedFromBeside(left()));
  for (let circle = circleIn(left()); circle !== null; circle = circleIn(left())) {
    found.push(circle.fault);
    for (const row of circle.rows) out.add(row);
  }
  // Till nobody is counted from a row that was left out.
  for (
    let orphans = noSuchSteps(left(), "after");
    orphans.length > 0;
    orphans = noSuchSteps(left(), "after")
  ) {
    add(
      orphans.map(({ row, found: after }) => ({
        row,
        column: "after",
        found: after,
        code: "after-left-out",
        after,
      })),
    );
  }
  const cells = new Set(found.filter(isOfCellAlone).map(({ row, column }) => `${row} ${column}`));
  const usable = left().map((row): StepRow => {
    const has = (column: string) => cells.has(`${row.row} ${column}`);
    return {
      ...row,
      keptOf100: has("kept") ? null : row.keptOf100,
      perPersonHour: has("perPersonHour") ? null : row.perPersonHour,
      needs: has("needs") ? "" : row.needs,
    };
  });
  return { usable, found };
}

function orderSteps(rows: readonly StepRow[]): Method {
  const group = rows.filter(isPassed);
  const indexOf = new Map(group.map(({ step }, index) => [stepKey(step), index]));
  const parents = group.map(({ after }) =>
    after === "" ? null : (indexOf.get(stepKey(after)) as number),
  );
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
  const newIndex = new Map(order.map((at, index) => [stepKey((group[at] as StepRow).step), index]));
  const placeOf = (step: string): number | null => newIndex.get(stepKey(step)) ?? null;
  const stepOf = (row: StepRow) => stepAt(row, placeOf(row.after));
  const steps = order.map((at) => stepOf(group[at] as StepRow));
  const ready = steps.findIndex((step) => step.key === "ready");
  return {
    name: (rows[0] as StepRow).method,
    steps,
    ahead: rows.filter(isAhead).map(stepOf),
    rounds: rows.flatMap((row) =>
      row.every === null
        ? []
        : [
            {
              ...stepOf(row),
              every: row.every,
              until: row.until === "" ? null : placeOf(row.until),
            },
          ],
    ),
    ready: ready === -1 ? steps.length - 1 : ready,
  };
}

/** @param after index of the step that its days are counted from; null for the first */
function stepAt(row: StepRow, after: number | null): Step {
  const { from, usual, by } = windowOf(row);
  const key = stepKey(row.step);
  return {
    name: row.step,
    key,
    after,
    from: after === null ? 0 : (from as number),
    usual: after === null ? 0 : (usual as number),
    by: after === null ? 0 : (by as number),
    counted: row.counted,
    kept: row.counted && row.keptOf100 !== null ? row.keptOf100 / 100 : null,
    perPersonHour: row.perPersonHour,
    needs: readNeeds(row.needs) as readonly Need[],
    caution: row.caution,
    source: row.source,
    kind: kindIn(row.kind) ?? usualKind(key, row.counted),
  };
}
