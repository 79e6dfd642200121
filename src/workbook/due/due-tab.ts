/*
 * Longer than most: how the list is made anew, and what is kept of what a person entered in it or
 * beside it, can be judged only together.
 */
import { type CivilDay, type DueTasks, dueTasks, type Task } from "../../core";
import { wholeNumberArgument } from "../../door/index";
import * as text from "../../sentences/made/due-tab";
import { DUE_WORDS } from "../../wording/batches";
import { dayWords } from "../../wording/days";
import { recordsRemarks } from "../../wording/records";
import { columnLetters } from "../host/cell-name";
import { cellsPart, formulaCall } from "../host/formula-text";
import { FIRST_WORDS, NOT_NEEDED } from "../host/mark";
import { movedFormula } from "../host/moved-formula";
import type { RecordsNow } from "../reading/records-tab";
import { LABEL } from "../settings/found-settings";
import {
  DUE_COLUMN,
  DUE_FIRST_ROW,
  DUE_FROZEN,
  DUE_HEADER_WIDTH,
  DUE_WIDTHS,
  type DueKey,
  dueHeader,
} from "../tabs/due-columns";
import { dueTabOf } from "../tabs/due-tab-found";
import { isHalfMade } from "../tabs/fill-again";
import { makeTab } from "../tabs/make-tab";
import type { MovedNote } from "../tabs/notes-in-the-way";
import { OWN_TABS } from "../tabs/own-tabs";
import { type OwnLayout, straightValues } from "../tabs/straighten";
import { DAY_FORMAT, type TabCell, type TabContent } from "../tabs/tab-content";
import { ageCells } from "./due-age";
import {
  besideOf,
  carried,
  type DueEntry,
  dueCell,
  dueEntries,
  dueKey,
  isPersonsLine,
  isTicked,
  onceEach,
  sameEntries,
} from "./due-entries";
import { type LinesBelow, linesBelow, type RowCells } from "./lines-below";

const USUAL_DAYS_AHEAD = 7;

/** How the due tab stands, whatever a person has moved or renamed in it. */
export function dueLayout(): OwnLayout {
  return {
    title: FIRST_WORDS.due,
    header: dueHeader(),
    filled: [text.task(), text.batch()],
    mendedBy: "refresh",
  };
}

/** The tasks that are due within the days ahead of the settings. */
export function tasksNow(now: RecordsNow, daysAhead?: number): readonly Task[] {
  return dueNow(now, daysAhead).rows;
}

/** The same with what is left out of them. */
export function dueNow(now: RecordsNow, daysAhead?: number): DueTasks {
  return dueTasks({
    records: now.records,
    timetable: now.timetable,
    asOf: now.asOf,
    withoutLooks: !now.settings.looks,
    daysAhead:
      daysAhead ??
      wholeNumberArgument(LABEL.daysAhead, now.door.cell(now.settings.daysAhead), USUAL_DAYS_AHEAD),
  });
}

/**
 * Makes the due tab anew, in the same sheet. What a person has entered in it comes along, but for the tasks
 * that are in the records by now.
 *
 * @param written keys of those tasks, see dueKey
 * @returns the name of its tab, which a person may have changed, and lines of the person's that stood
 *   below the list and stand elsewhere now
 * @throws Error when something is entered meanwhile; the tab is left as it was then
 */
export function refreshDueTab(
  now: RecordsNow,
  written: ReadonlySet<string> = new Set(),
): { readonly name: string; readonly moved: readonly MovedNote[] } {
  const old = dueTabOf(now.workbook);
  const name = old?.getName() ?? OWN_TABS.due;
  const values = old === null ? [] : straightValues(old, dueLayout());
  const entries = dueEntries(values);
  // One that was left half made may hold rows of both the old list and the new one.
  const ownCells = besideIn(old, values);
  const all = [...entries, ...rowsBeside(values, entries, ownCells)];
  const single = isHalfMade(values[0]?.[0]) ? onceEach(all) : all;
  // A note beside a task that is done stays, with its row.
  const open = single.filter((entry) => !written.has(dueKey(entry)) || ownCells.isAt(entry));
  const lines = linesBelow(old, values, all);
  const kept = [...open, ...lines.unseen].sort((one, other) => one.row - other.row);
  const content = dueTab(now, kept, { ownCells, lines });
  makeTab(now.workbook, { ...content, name }, (standing) => {
    if (!sameEntries(dueEntries(standing.getDataRange().getValues()), entries)) {
      throw new Error(text.justEntered());
    }
  });
  return { name, moved: lines.moved(name) };
}

/**
 * The due list as a tab of values with boxes to tick, for those who have no sidebar: ticking a box
 * records the task as done today. Late tasks come first and say so in words.
 *
 * @param entries what was entered in the tab before and isn't in the records
 */
function dueTab(
  now: RecordsNow,
  entries: readonly DueEntry[],
  { ownCells, lines }: { readonly ownCells: Beside; readonly lines: LinesBelow },
): Omit<TabContent, "name"> {
  const left = [...entries];
  const due = dueNow(now);
  const tasks = [...due.rows].sort((a, b) => Number(isLate(b)) - Number(isLate(a)));
  const rows = tasks.map((task) => {
    const at = left.findIndex(
      (entry) => entry.batch === task.batch && entry.task === task.step.name,
    );
    const [entry] = at === -1 ? [] : left.splice(at, 1);
    return { entry, cells: { ...entryCells(entry), ...taskCells(now, task) } };
  });
  const first = DUE_FIRST_ROW + rows.length;
  const below = left.map((entry, at) => {
    const isLine = isPersonsLine(entry.cells);
    return { entry, cells: isLine ? lines.cellsOf(entry, first + at) : offTheList(entry) };
  });
  const all = [...rows, ...below];
  const { what, place, plants, note, who, from, by, state } = DUE_COLUMN;
  return {
    firstWords: FIRST_WORDS.due,
    madeBy: [
      `${FIRST_WORDS.due} ${text.madeBy({ day: dayWords(now.asOf), word: NOT_NEEDED, sign: ABOUT_SIGN })}`,
      recordsRemarks(due.remarks, "page") ?? "",
    ]
      .join(" ")
      .trim(),
    top: ageCells(now),
    topHeight: 112,
    rows: [
      [...dueHeader().map((name) => ({ text: name })), ...ownCells.header],
      ...all.map(({ entry, cells }, at) => [
        ...rowCells(cells, at),
        ...(entry === undefined ? [] : ownCells.of(entry, DUE_FIRST_ROW + at)),
      ]),
    ],
    frozenRows: 2,
    frozenColumns: DUE_FROZEN,
    mendedBy: "refresh",
    filled: dueLayout().filled,
    widths: DUE_WIDTHS,
    formats: {
      // What a person types there stays text, whatever it looks like.
      [who - 1]: "@",
      [note - 1]: "@",
      [from - 1]: DAY_FORMAT,
      [by - 1]: DAY_FORMAT,
    },
    rowFormats: {
      column: plants - 1,
      formats: all.map((_, at) => (tasks[at]?.isEstimate ? ABOUT_FORMAT : COUNT_FORMAT)),
    },
    wrapped: [what, place, note, state].map((column) => column - 1),
    middle: true,
    bold: { rows: tasks.filter(isLate).length, column: what - 1 },
  };
}

/** What a person has put to the right of the list: it goes with the batch and the task of its row. */
interface Beside {
  isAt(entry: Pick<DueEntry, "row" | "cells">): boolean;
  readonly header: readonly TabCell[];
  /** @param row where the entry comes to stand, from 1 */
  of(entry: DueEntry, row: number): readonly TabCell[];
}

function besideIn(
  sheet: GoogleAppsScript.Spreadsheet.Sheet | null,
  values: readonly (readonly unknown[])[],
): Beside {
  const first = DUE_HEADER_WIDTH;
  const width = (values[0]?.length ?? 0) - first;
  if (sheet === null || width < 1) return { isAt: () => false, header: [], of: () => [] };
  const formulas = sheet.getRange(1, first + 1, values.length, width).getFormulas();
  const cells = (from: number, to: number): TabCell[] =>
    besideOf(values[from - 1] ?? []).map((value, at) => {
      const formula = formulas[from - 1]?.[at] ?? "";
      return formula === "" ? carried(value) : { formula: movedFormula(formula, from, to) };
    });
  const header = DUE_FIRST_ROW - 1;
  return {
    isAt: ({ row, cells: standing }) =>
      [...besideOf(standing), ...(formulas[row - 1] ?? [])].some((cell) => cell !== ""),
    header: cells(header, header),
    of: (entry, row) => cells(entry.row, row),
  };
}

/** Rows in which nothing is entered, but for a formula beside that shows nothing just now. */
function rowsBeside(
  values: readonly (readonly unknown[])[],
  entries: readonly DueEntry[],
  ownCells: Beside,
): readonly DueEntry[] {
  const known = new Set(entries.map(({ row }) => row));
  return values.flatMap((cells, at): DueEntry[] => {
    const row = at + 1;
    if (row < DUE_FIRST_ROW || known.has(row) || !ownCells.isAt({ row, cells })) return [];
    const [task, batch] = [String(dueCell(cells, "task")), String(dueCell(cells, "batch"))];
    return [{ task, batch, row, cells }];
  });
}

/** A row's cells in the order of the columns, with the sign of its state. */
function rowCells(cells: RowCells, at: number): TabCell[] {
  const state = `${columnLetters(DUE_COLUMN.state)}${DUE_FIRST_ROW + at}`;
  const sign: TabCell = { formula: formulaCall("LEFT", [cellsPart(state)]) };
  return (Object.keys(DUE_COLUMN) as DueKey[]).map((key) =>
    key === "sign" ? sign : (cells[key] ?? null),
  );
}

function isLate({ daysLate }: Task): boolean {
  return daysLate > 0;
}

function taskCells(now: RecordsNow, task: Task): RowCells {
  const written = (value: string): TabCell => (value === "" ? null : { text: value });
  const date = (day: CivilDay): TabCell => ({ date: now.door.date(day) });
  const number = (value: number | null): TabCell => (value === null ? null : { number: value });
  const late = { days: task.daysLate };
  const mark = isLate(task) ? [text.lateMark(late)] : [];
  return {
    what: written([task.step.name, task.batch, ...mark].join("\n")),
    place: written(task.place),
    plants: number(task.plants),
    task: written(task.step.name),
    batch: written(task.batch),
    from: date(task.from),
    by: date(task.by),
    status: written(isLate(task) ? text.lateBy(late) : DUE_WORDS[task.status]()),
    hours: number(task.hours === null ? null : Math.round(task.hours * 10) / 10),
    caution: written(task.step.caution),
  };
}

/** What a person enters and what is said of it, blank or as it was. */
function entryCells(entry: DueEntry | undefined): RowCells {
  const cells = entry?.cells ?? [];
  return {
    done: { tick: isTicked(dueCell(cells, "done")) },
    count: carried(dueCell(cells, "count")),
    who: carried(dueCell(cells, "who")),
    note: carried(dueCell(cells, "note")),
    yes: { tick: isTicked(dueCell(cells, "yes")) },
    state: carried(dueCell(cells, "state")),
    memory: carried(dueCell(cells, "memory")),
  };
}

/** A row whose task is not due any more: what was entered in it must not go unseen. */
function offTheList(entry: DueEntry): RowCells {
  const stands = String(dueCell(entry.cells, "state"));
  const as = (key: DueKey) => carried(dueCell(entry.cells, key));
  return {
    ...entryCells(entry),
    state: { text: stands === "" ? `${OFF_SIGN} ${text.offTheList()}` : stands },
    what: as("what"),
    place: as("place"),
    plants: as("plants"),
    task: as("task"),
    batch: as("batch"),
    from: as("from"),
    by: as("by"),
    status: as("status"),
    hours: as("hours"),
    caution: as("caution"),
  };
}

/** Before a number that nobody counted. The cell holds the number alone, for formulas. */
const ABOUT_SIGN = "~";
const COUNT_FORMAT = "0";
const ABOUT_FORMAT = `"${ABOUT_SIGN}"0`;

/** First in Written, where the column of signs shows it. */
const OFF_SIGN = "–";
