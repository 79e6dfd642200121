import type { TimetableFault } from "../faults";
import { stepKey, type TimetableField } from "../words";
import { readNeeds } from "./needs";
import { kindIn } from "./step-kind";
import { MOST_DAYS, type StepRow, windowOf } from "./step-row";

/** A fault as it is found, before it is known what is left out because of it. */
export type FoundFault = TimetableFault extends infer One
  ? One extends TimetableFault
    ? Omit<One, "leftOut">
    : never
  : never;

const BESIDE_DAYS: ReadonlySet<TimetableField> = new Set([
  "kept",
  "perPersonHour",
  "needs",
  "kind",
]);

/** Whether the row can be used without the cell; days that can't be read are as blank ones. */
export function isOfCellAlone({ column, code }: FoundFault): boolean {
  return BESIDE_DAYS.has(column) || (code === "no-number" && column !== "every");
}

export function isOfDays({ column }: FoundFault): boolean {
  return column === "from" || column === "usual" || column === "by" || column === "every";
}

/** What is wrong with the days and the numbers of a row. */
export function faultsOfRow(row: StepRow): readonly FoundFault[] {
  const faults: FoundFault[] = [];
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
      faults.push({ ...at("usual", `${from} / ${usual} / ${by}`), code: "days-must-rise", step });
    } else if (from < 0 && (by > 0 || row.every !== null || row.counted)) {
      faults.push({ ...at("from", from), code: "before-parent", step, after: row.after });
    } else {
      const window = { from, usual, by } as const;
      for (const column of ["from", "usual", "by"] as const) {
        const days = window[column];
        if (!Number.isInteger(days)) {
          faults.push({ ...at(column, days), code: "days-not-whole", step });
        } else if (Math.abs(days) > MOST_DAYS) {
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
  if (row.every !== null && !(Number.isInteger(row.every) && row.every >= 1)) {
    faults.push({ ...at("every", row.every), code: "days-not-whole", step });
  }
  if (row.every !== null && row.after === "") {
    faults.push({ ...at("after", ""), code: "care-without-start", step });
  }
  if (row.kind !== "" && kindIn(row.kind) === null) {
    faults.push({ ...at("kind", row.kind), code: "no-such-kind", step });
  }
  if (readNeeds(row.needs) === null) {
    faults.push({ ...at("needs", row.needs), code: "needs-unreadable", step });
  }
  return faults;
}

/** Rows whose step stands further up already, also under another word for it. */
export function sameSteps(group: readonly StepRow[]): readonly FoundFault[] {
  const firsts = new Map<string, StepRow>();
  return group.flatMap((row): FoundFault[] => {
    const other = firsts.get(stepKey(row.step));
    if (other === undefined) {
      firsts.set(stepKey(row.step), row);
      return [];
    }
    const at = { row: row.row, column: "step", found: row.step } as const;
    return [{ ...at, code: "same-step", step: row.step, other: other.step, method: row.method }];
  });
}

/** Rows that are counted from, or end with, a step which is not there. */
export function noSuchSteps(
  group: readonly StepRow[],
  column: "after" | "until",
): readonly FoundFault[] {
  const keys = new Set(group.map(({ step }) => stepKey(step)));
  return group
    .filter((row) => row[column] !== "" && !keys.has(stepKey(row[column])))
    .map((row) => ({
      row: row.row,
      column,
      found: row[column],
      code: "no-such-step",
      after: row[column],
      method: row.method,
    }));
}

/** The first of a circle of steps of which each is counted from the next, with its rows; null where none. */
export function circleIn(
  group: readonly StepRow[],
): { readonly fault: FoundFault; readonly rows: readonly StepRow[] } | null {
  const rowOf = new Map(group.map((row) => [stepKey(row.step), row]));
  for (const start of group) {
    const path: StepRow[] = [];
    let row: StepRow | undefined = start;
    while (row !== undefined && !path.includes(row)) {
      path.push(row);
      row = row.after === "" ? undefined : rowOf.get(stepKey(row.after));
    }
    if (row === undefined) continue;
    const rows = path.slice(path.indexOf(row));
    const first = rows[0] as StepRow;
    const at = { row: first.row, column: "after", found: first.after } as const;
    return { fault: { ...at, code: "circle", steps: rows.map(({ step }) => step) }, rows };
  }
  return null;
}
