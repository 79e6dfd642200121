import { stepKey } from "../words";
import type { FoundFault } from "./step-faults";
import { type StepRow, windowOf } from "./step-row";
import type { Method, Step } from "./timetable";

/** Whether a row is work that comes before the step it is counted from: its days are below 0. */
export function isAhead(row: StepRow): boolean {
  return row.after !== "" && row.every === null && (windowOf(row).from ?? 0) < 0;
}

/** Whether a row is a step that a batch passes once: neither work ahead of one nor care that is repeated. */
export function isPassed(row: StepRow): boolean {
  return row.every === null && !isAhead(row);
}

/** Every step that records may have a day of: those that are passed, work ahead of them, repeated care. */
export function recordedSteps({ steps, ahead, rounds }: Method): readonly Step[] {
  return [...steps, ...ahead, ...rounds];
}

/** Rows that are counted from, or end with, what a batch does not pass as a step. */
export function countedFromBeside(group: readonly StepRow[]): readonly FoundFault[] {
  const beside = new Set(group.filter((row) => !isPassed(row)).map(({ step }) => stepKey(step)));
  return (["after", "until"] as const).flatMap((column) =>
    group
      .filter((row) => beside.has(stepKey(row[column])))
      .map(
        (row): FoundFault => ({
          row: row.row,
          column,
          found: row[column],
          code: "counted-from-beside",
          after: row[column],
        }),
      ),
  );
}
