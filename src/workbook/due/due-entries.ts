import {
  DUE_COLUMN,
  DUE_FIRST_ROW,
  DUE_HEADER_WIDTH,
  type DueKey,
  ENTERED,
} from "../tabs/due-columns";
import type { TabCell } from "../tabs/tab-content";

/** A row of the due tab in which a person has entered something, or which the add-in remembers. */
export interface DueEntry {
  /** May be empty, as the batch, in a row that is a line of the person's and no task. */
  readonly task: string;
  readonly batch: string;
  /** Row in the tab, from 1. */
  readonly row: number;
  /** All cells of the row, as they stand. */
  readonly cells: readonly unknown[];
}

/** Rows of the due tab, given all its values, that are ticked or typed into. */
export function dueEntries(values: readonly (readonly unknown[])[]): readonly DueEntry[] {
  return values.slice(DUE_FIRST_ROW - 1).flatMap((cells, at): DueEntry[] => {
    const [task, batch] = [String(dueCell(cells, "task")), String(dueCell(cells, "batch"))];
    const isNote = isPersonsLine(cells) && cells.some(isNoted);
    const isEntered = [...ENTERED].some((column) => isFilled(cells[column - 1]));
    const isKept = isFilled(dueCell(cells, "memory")) || besideOf(cells).some(isFilled);
    return isNote || isEntered || isKept ? [{ task, batch, row: DUE_FIRST_ROW + at, cells }] : [];
  });
}

/**
 * Whether a row is a line of the person's and no task: nothing stands in it where every task of the
 * list has something.
 */
export function isPersonsLine(cells: readonly unknown[]): boolean {
  const [task, batch] = [dueCell(cells, "task"), dueCell(cells, "batch")];
  if (task === "" && batch === "") return true;
  return (["what", "from", "by", "status"] as const).every((key) => dueCell(cells, key) === "");
}

/** What stands in a row beside our columns. */
export function besideOf(cells: readonly unknown[]): readonly unknown[] {
  return cells.slice(DUE_HEADER_WIDTH);
}

function isNoted(value: unknown, at: number): boolean {
  return at !== DUE_COLUMN.sign - 1 && isFilled(value);
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
      const note = isPersonsLine(entry.cells) ? entry.cells : besideOf(entry.cells);
      return [JSON.stringify([dueKey(entry), entered, note]), entry];
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
  if (typeof value === "boolean") return { tick: value };
  return value instanceof Date ? { date: value } : { text: String(value) };
}
