import * as text from "../../src/sentences/made/due-tab";
import type { Nursery } from "./nursery";

const DUE = "Due list";

/** The columns of the due list, as a person knows them. */
const HEADERS = {
  Done: text.done,
  "?": text.sign,
  What: text.what,
  Place: text.place,
  Plants: text.plants,
  Count: text.counted,
  Who: text.who,
  Note: text.note,
  "Yes, write it": text.yes,
  Written: text.state,
  Write: text.memory,
  Task: text.task,
  Batch: text.batch,
  From: text.from,
  By: text.by,
  Status: text.status,
  Hours: text.hours,
  Caution: text.caution,
};
export type DueHeader = keyof typeof HEADERS;

/** Place of a column, from 0. */
export function dueColumn(nursery: Nursery, header: DueHeader): number {
  const at = (nursery.values(DUE)[1] ?? []).indexOf(HEADERS[header]());
  if (at === -1) throw new Error(`the due list has no column ${header}`);
  return at;
}

/** A cell such as "F7". */
export function dueCell(nursery: Nursery, header: DueHeader, row: number): string {
  return `${String.fromCharCode(65 + dueColumn(nursery, header))}${row}`;
}

export function dueValue(nursery: Nursery, header: DueHeader, row: number) {
  return nursery.value(DUE, dueCell(nursery, header, row));
}

/** Rows of the due list below its header, each by the headers that are asked for. */
export function dueRows(nursery: Nursery, headers: readonly DueHeader[]) {
  const columns = headers.map((header) => dueColumn(nursery, header));
  return nursery
    .values(DUE)
    .slice(2)
    .map((row) => columns.map((column) => row[column]));
}

/** Row of a task in the due list, from 1. */
export function dueRow(nursery: Nursery, batch: string, task = "Take count"): number {
  const row = dueRows(nursery, ["Task", "Batch"]).findIndex(
    ([named, of]) => named === task && of === batch,
  );
  if (row === -1) throw new Error(`no ${task} of ${batch} in the due list`);
  return row + 3;
}

/** Types into cells of a row, one after the other, and waits for what comes of it. */
export async function enterDue(
  nursery: Nursery,
  row: number,
  entered: Partial<Record<DueHeader, string>>,
): Promise<void> {
  for (const [header, text] of Object.entries(entered)) {
    nursery.w.type(DUE, dueCell(nursery, header as DueHeader, row), text);
    await nursery.w.settled();
  }
}

/** What is put into a row of the due list, by header. */
export type DueEntry = Partial<Record<DueHeader, string | number | boolean>>;

/** Puts values into a row as if their edits were never told of. */
export function setDue(nursery: Nursery, row: number, values: DueEntry): void {
  for (const [header, value] of Object.entries(values)) {
    nursery
      .sheet(DUE)
      .getRange(dueCell(nursery, header as DueHeader, row))
      .setValue(value);
  }
}

/** What is said in the row of a task. */
export const dueState = (nursery: Nursery, row: number) => dueValue(nursery, "Written", row);

/** Day and count of the takes of each batch of smallRecords. */
export const takesIn = (nursery: Nursery) =>
  nursery
    .values("Records")
    .slice(1)
    .map((row) => [row[11], row[12]]);
/** Takes that nobody has counted. */
export const NO_TAKES = ["", ""];
