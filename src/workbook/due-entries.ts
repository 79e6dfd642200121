import { DUE_COLUMN, DUE_FIRST_ROW, type DueKey, ENTERED } from "./due-columns";
import type { TabCell } from "./tab-content";

/** A row of the due tab in which a person has entered something, or which the add-in remembers. */
export interface DueEntry {
  readonly task: string;
  readonly batch: string;
  /** All cells of the row, as they stand. */
  readonly cells: readonly unknown[];
}

/** Rows of the due tab, given all its values, that are ticked or typed into. */
export function dueEntries(values: readonly (readonly unknown[])[]): readonly DueEntry[] {
  return values.slice(DUE_FIRST_ROW - 1).flatMap((cells): DueEntry[] => {
    const isEntered = [...ENTERED].some((column) => isFilled(cells[column - 1]));
    if (!isEntered && !isFilled(dueCell(cells, "memory"))) return [];
    const [task, batch] = [dueCell(cells, "task"), dueCell(cells, "batch")];
    return [{ task: String(task), batch: String(batch), cells }];
  });
}

function isFilled(value: unknown): boolean {
  return (value ?? "") !== "" && value !== false;
}

/** A cell of a row by its column's key. */
export function dueCell(cells: readonly unknown[], key: DueKey): unknown {
  return cells[DUE_COLUMN[key] - 1] ?? "";
}

/** Task and batch as one text, equal for equal ones. */
export function dueKey({ task, batch }: { readonly task: string; readonly batch: string }): string {
  return JSON.stringify([task, batch]);
}

/** The entries without those that are there twice. */
export function onceEach(entries: readonly DueEntry[]): readonly DueEntry[] {
  const seen = new Map(
    entries.map((entry) => {
      const entered = [...ENTERED].map((column) => entry.cells[column - 1]);
      return [JSON.stringify([dueKey(entry), entered]), entry];
    }),
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
