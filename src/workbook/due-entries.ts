import { DUE_COLUMN, DUE_FIRST_ROW } from "./due-columns";
import type { TabCell } from "./tab-content";

/** A row of the due tab in which a person has entered something. */
export interface DueEntry {
  readonly task: string;
  readonly batch: string;
  /** All cells of the row, as they stand. */
  readonly cells: readonly unknown[];
}

/** Rows of the due tab, given all its values, that are ticked or typed into. */
export function dueEntries(values: readonly (readonly unknown[])[]): readonly DueEntry[] {
  return values.slice(DUE_FIRST_ROW - 1).flatMap((cells): DueEntry[] => {
    const entered = [DUE_COLUMN.count, DUE_COLUMN.who, DUE_COLUMN.note].some(
      (column) => (cells[column - 1] ?? "") !== "",
    );
    const done = cells[DUE_COLUMN.done - 1] ?? "";
    if (!entered && (done === "" || done === false)) return [];
    const [task, batch] = [cells[DUE_COLUMN.task - 1], cells[DUE_COLUMN.batch - 1]];
    return [{ task: String(task ?? ""), batch: String(batch ?? ""), cells }];
  });
}

/** Task and batch as one text, equal for equal ones. */
export function dueKey({ task, batch }: { readonly task: string; readonly batch: string }): string {
  return JSON.stringify([task, batch]);
}

/** The entries without those that are there twice. */
export function onceEach(entries: readonly DueEntry[]): readonly DueEntry[] {
  const { done, note } = DUE_COLUMN;
  const seen = new Map(
    entries.map((entry) => [
      JSON.stringify([dueKey(entry), entry.cells.slice(done - 1, note)]),
      entry,
    ]),
  );
  return [...seen.values()];
}

/** Whether two readings of the tab hold the same entries. */
export function sameEntries(one: readonly DueEntry[], other: readonly DueEntry[]): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

/** A box that is ticked; a paste may have put text over the box. */
export function isTicked(done: unknown): boolean {
  return done === true || (typeof done === "string" && TICKED.test(done.trim()));
}

const TICKED = /^(true|yes|x|✓|✔)$/i;

/** What stood in a cell of the old tab, for the new one. */
export function carried(value: unknown): TabCell {
  if (value === "" || value === null || value === undefined) return null;
  if (typeof value === "number") return { number: value };
  return value instanceof Date ? { date: value } : { text: String(value) };
}
