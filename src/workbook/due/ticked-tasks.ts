/*
 * Longer than most: ticks are recorded all in one write, or each for itself; both must say the
 * same of a row.
 */
import { plainlyNotDone } from "../../core";
import { faultSentence } from "../../wording/writing";
import type { WritingFault } from "../../wording/writing-codes";
import { DoneAnyway, withLock } from "../host/lock";
import { troubleSentence, WritingError } from "../host/writing-error";
import { plainText, type RecordsNow, recordsNow } from "../reading/records-tab";
import { settledNow } from "../tables/settle-log";
import { valuesWith } from "../tables/values-with";
import { dueTabOf } from "../tabs/due-tab-found";
import { OWN_TABS } from "../tabs/own-tabs";
import { addColumn } from "../tasks/new-column";
import { notCounted, planRecord, type RecordPlan } from "../tasks/record-task";
import type { CellWrite } from "../writing/table-write";
import { type LoggedGroup, writeGroups } from "../writing/write-groups";
import type { LogEntry, WriteLog } from "../writing/write-log";
import { sumOf } from "./due-age";
import { dueKey } from "./due-entries";
import { type DueList, readDueList } from "./due-list";
import { markOf } from "./due-memory";
import { type DueRow, dueRows } from "./due-rows";
import { ownWrites } from "./own-writes";
import {
  asks,
  cleared,
  type InRecords,
  notWritten,
  type RowState,
  there,
  written,
} from "./row-state";
import { sayInRows } from "./say-in-rows";
import { takeBackUnticked } from "./untick";

export interface Ticked {
  /** How many tasks were written now. */
  readonly recorded: number;
  /** How many were taken back, since their boxes are clear again. */
  readonly takenBack: number;
  /** How many ticked tasks could not be written, or cleared ones not taken back; their rows say why. */
  readonly refused: number;
  /** Keys of the ticked tasks that are in the records, see dueKey. */
  readonly inRecords: ReadonlySet<string>;
}

/**
 * Records every task of the due tab that is ticked and not, or not wholly, in the records, and takes
 * back what a row has written whose box is clear again. It looks at the whole tab, so that a tick whose
 * edit was never told of is recorded with the next one, or from the menu, and a count that is typed
 * after the tick is added.
 */
export function recordTicked(): Ticked {
  return withLock(recordTickedUnderLock);
}

/** The same with the lock held. */
export function recordTickedUnderLock(): Ticked {
  const sheet = dueTabOf(SpreadsheetApp.getActiveSpreadsheet());
  if (sheet === null) throw new WritingError({ code: "tabMissing", tab: OWN_TABS.due });
  return recordTicksOf(readDueList(sheet));
}

/** The same where the tab is found and read. */
export function recordTicksOf({ sheet, range, values }: DueList): Ticked {
  const { now, log } = settledNow();
  const rows = dueRows(values);
  const unticked = takeBackUnticked(
    rows.filter(({ box, memory }) => box === "clear" && memory.writes.length > 0),
    { now, log, reread: recordsNow },
  );
  const states = new Map(unticked.states);
  for (const row of rows) {
    if (row.box !== "clear" || states.has(row)) continue;
    const state = cleared(row);
    if (state !== null) states.set(row, state);
  }
  const ticked = rows.filter(({ box }) => box !== "clear");
  const read = withCells(now, [...unticked.cells.values()].flat());
  const recorded = recordRows(ticked, columnsAdded(ticked, read, log), log);
  for (const [row, state] of recorded.states) states.set(row, state);
  const changes = new Map(
    [...unticked.cells, ...recorded.cells].map(([row, cells]) => [row, changeOf(now, cells)]),
  );
  try {
    sayInRows(sheet, range, { states, changes });
  } catch {
    sayAgain(() => sayInRows(sheet, range, { states, changes }), changes.size > 0);
  }
  const refused = [...states].filter(
    ([{ box }, { code }]) => box !== "clear" && code !== "written",
  );
  const stuck = [...unticked.states.values()].filter(({ memory }) => memory.writes.length > 0);
  return {
    recorded: recorded.cells.size,
    takenBack: unticked.states.size - stuck.length,
    refused: refused.length + stuck.length,
    inRecords: new Set(
      [...recorded.states].filter(([, { code }]) => code === "written").map(([row]) => dueKey(row)),
    ),
  };
}

/** What was written stands, whether it can be said in the rows or not. */
function sayAgain(say: () => void, wrote: boolean): void {
  try {
    say();
  } catch (error) {
    throw wrote ? new DoneAnyway(error) : error;
  }
}

interface Recorded {
  readonly states: ReadonlyMap<DueRow, RowState>;
  /** The cells that were written, by row. */
  readonly cells: ReadonlyMap<DueRow, readonly CellWrite[]>;
}

/** A row that is to be written. */
interface PlannedRow {
  readonly row: DueRow;
  readonly plan: RecordPlan;
}

/** Records ticked rows: all in one write, or where that fails each for itself. */
function recordRows(rows: readonly DueRow[], now: RecordsNow, log: WriteLog): Recorded {
  const states = new Map<DueRow, RowState>();
  let entries: readonly LogEntry[] | null = null;
  const logged = () => {
    entries ??= log.entries();
    return entries;
  };
  const planned: PlannedRow[] = [];
  let mind = now;
  const touched = new Set<string>();
  for (const row of rows) {
    // What is to be written for the same batch, or in a line above, is part of what this row finds.
    if (touched.has(row.batch) || (touched.size > 0 && hasLog(mind))) {
      mind = { ...mind, records: mind.readAs(mind.values) };
      touched.clear();
    }
    const outcome = outcomeOf(row, mind, logged);
    if ("code" in outcome) {
      states.set(row, outcome);
      continue;
    }
    planned.push(outcome);
    touched.add(row.batch);
    mind = { ...mind, values: valuesWith(mind.values, outcome.plan.writes) };
  }
  if (planned.length === 0) return { states, cells: new Map() };
  const when = now.minute();
  const id = Utilities.getUuid();
  const groups = planned.map((one, at) => groupOf(now, one, at === 0 ? id : `${id}-${at + 1}`));
  const cells = new Map<DueRow, readonly CellWrite[]>();
  const done = (one: PlannedRow, itsId: string) => {
    cells.set(one.row, one.plan.writes);
    states.set(one.row, writtenState(one, itsId));
  };
  try {
    writeGroups({ log, sheet: now.sheet, values: now.values, when }, groups);
    planned.forEach((one, at) => {
      done(one, groups[at]?.id ?? id);
    });
  } catch (error) {
    const [only] = planned;
    if (planned.length === 1 && only !== undefined) {
      states.set(only.row, notWritten(troubleSentence(error), only.row));
    } else {
      for (const [at, one] of planned.entries()) recordAlone(one, groups[at]?.id ?? id);
    }
  }
  return { states, cells };

  function recordAlone(one: PlannedRow, itsId: string): void {
    const { row } = one;
    try {
      const fresh = recordsNow();
      const outcome = outcomeOf(row, fresh, logged);
      if ("code" in outcome) {
        states.set(row, outcome);
        return;
      }
      const into = { log, sheet: fresh.sheet, values: fresh.values, when };
      // Another id than that of the write that failed, which stands in the log.
      const secondId = `${itsId}-again`;
      writeGroups(into, [groupOf(fresh, outcome, secondId)]);
      done(outcome, secondId);
    } catch (error) {
      states.set(row, notWritten(troubleSentence(error), row));
    }
  }
}

/** The records once the columns are added that rows asked for and that were answered with yes. */
function columnsAdded(rows: readonly DueRow[], now: RecordsNow, log: WriteLog): RecordsNow {
  let read = now;
  for (const row of rows) {
    if (!row.yes || row.memory.asked === "") continue;
    const header = columnAgreed(row, read);
    if (header === null) continue;
    addColumn({ now: read, log }, header, plainText(read.door, row.who));
    read = recordsNow();
  }
  return read;
}

function columnAgreed(row: DueRow, now: RecordsNow) {
  try {
    const { newColumn, asked } = planRecord(now, wishOf(row, now, null));
    return row.memory.asked === markOf(asked.map(({ id }) => id)) ? newColumn : null;
  } catch {
    // Its row will say why.
    return null;
  }
}

/** What a row wants to have written. */
function wishOf(row: DueRow, { door }: RecordsNow, count: number | null) {
  const text = (value: unknown) => plainText(door, value);
  // The box says that it is done, not when: a day that stands there is the day.
  const wish = { batch: row.batch, task: row.task, day: null, count };
  const notDone = plainlyNotDone(text(row.count));
  return { ...wish, notDone, who: text(row.who), note: text(row.note) };
}

/** What a ticked row comes to: what is to be said of it, or what is to be written. */
function outcomeOf(
  row: DueRow,
  now: RecordsNow,
  logged: () => readonly LogEntry[],
): RowState | PlannedRow {
  if (row.box === "text") {
    return refused({ code: "noBox", found: plainText(now.door, row.done) }, row);
  }
  const notDone = plainlyNotDone(plainText(now.door, row.count));
  const count = notDone ? null : countIn(now, row.count);
  if (typeof count === "object" && count !== null) return refused(count, row);
  const all = wishOf(row, now, count);
  try {
    let plan = planRecord(now, all);
    const isMore = plan.writes.length + plan.kept.length > 0;
    if (row.memory.writes.length > 0 && (isMore || (count === null && plan.hasCount))) {
      plan = planRecord(now, all, ownWrites(now, logged(), row));
    }
    const isNew = plan.newColumn !== null;
    if (plan.writes.length + plan.kept.length === 0 && !isNew) return standing(row, plan);
    // In the row, since no dialog of a trigger shows on a phone; what the row itself wrote was asked about.
    const blank = row.memory.writes.length === 0 ? notCounted(plan, row) : [];
    const asked = [...plan.asked, ...blank];
    if (asked.length === 0) return { row, plan };
    const mark = markOf(asked.map(({ id }) => id));
    if (row.yes && row.memory.asked === mark) return { row, plan };
    return asks(
      asked.map(({ ask }) => ask),
      mark,
      row,
    );
  } catch (error) {
    return notWritten(troubleSentence(error), row);
  }
}

/** Of a row of which everything is in the records. */
function standing(row: DueRow, plan: RecordPlan): RowState {
  const { writes } = row.memory;
  return writes.length > 0 ? written(whereOf(plan), writes) : there(whereOf(plan));
}

function writtenState({ row, plan }: PlannedRow, id: string): RowState {
  return written(whereOf(plan), [...row.memory.writes, id]);
}

function whereOf({ planned, missesCount, inLog }: RecordPlan): InRecords {
  return { cells: planned.map(({ tab, cell }) => `${tab}!${cell}`), missesCount, inLog };
}

function refused(fault: WritingFault, row: DueRow): RowState {
  return notWritten(faultSentence(fault), row);
}

function groupOf(now: RecordsNow, { row, plan }: PlannedRow, id: string): LoggedGroup {
  const { writes, kept, marks } = plan;
  return { id, who: plainText(now.door, row.who), writes, kept, ...marks };
}

function countIn({ door }: RecordsNow, value: unknown): number | null | WritingFault {
  const text = plainText(door, value).trim();
  if (text === "") return null;
  if (typeof value === "number" || /^\d+$/.test(text)) return Number(text);
  return { code: "notACount", found: text };
}

function hasLog({ records }: RecordsNow): boolean {
  return records.tables.some(({ kind }) => kind === "log");
}

/** The records as they are with some cells written. */
function withCells(now: RecordsNow, cells: readonly CellWrite[]): RecordsNow {
  if (cells.length === 0) return now;
  const values = valuesWith(now.values, cells);
  return { ...now, values, records: now.readAs(values) };
}

/** By how much written cells change the number that stands for the records. */
function changeOf(now: RecordsNow, cells: readonly CellWrite[]): number {
  const [after, before] = [cells.map((cell) => cell.after), cells.map((cell) => cell.before)];
  return sumOf(now, after) - sumOf(now, before);
}
