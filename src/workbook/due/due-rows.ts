import { DUE_FIRST_ROW } from "../tabs/due-columns";
import { dueCell, isTicked } from "./due-entries";
import { type DueMemory, readMemory } from "./due-memory";

/** A row of the due tab, read. */
export interface DueRow {
  /** From 1. */
  readonly row: number;
  readonly task: string;
  readonly batch: string;
  /** What stands in the box: a paste may have put text over it. */
  readonly done: unknown;
  readonly box: "ticked" | "clear" | "text";
  readonly count: unknown;
  readonly who: unknown;
  readonly note: unknown;
  /** Whether its question is answered. */
  readonly yes: boolean;
  /** What is said of it, as it stands. */
  readonly state: string;
  readonly memory: DueMemory;
  /** By how much it has changed the records since the list was made, see due-age. */
  readonly change: number;
}

/** The rows of the due tab, given all its values. */
export function dueRows(values: readonly (readonly unknown[])[]): readonly DueRow[] {
  return values.slice(DUE_FIRST_ROW - 1).map((cells, at): DueRow => {
    const done = dueCell(cells, "done");
    const isClear = done === "" || done === false;
    return {
      row: DUE_FIRST_ROW + at,
      task: String(dueCell(cells, "task")),
      batch: String(dueCell(cells, "batch")),
      done,
      box: isClear ? "clear" : isTicked(done) ? "ticked" : "text",
      count: dueCell(cells, "count"),
      who: dueCell(cells, "who"),
      note: dueCell(cells, "note"),
      yes: isTicked(dueCell(cells, "yes")),
      state: String(dueCell(cells, "state")),
      memory: readMemory(dueCell(cells, "memory")),
      change: Number(dueCell(cells, "change")) || 0,
    };
  });
}
