import { type CivilDay, dueTasks, type Task } from "../core";
import { wholeNumberArgument } from "../door/index";
import { DUE_COLUMN } from "./due-columns";
import {
  carried,
  type DueEntry,
  dueEntries,
  dueKey,
  isTicked,
  onceEach,
  sameEntries,
} from "./due-entries";
import { isHalfMade } from "./fill-again";
import { makeTab } from "./make-tab";
import { OWN_TABS, ownTab } from "./own-tabs";
import type { RecordsNow } from "./records-tab";
import { type OwnLayout, straightValues } from "./straighten";
import { DAY_FORMAT, type TabCell, type TabContent } from "./tab-content";

const USUAL_DAYS_AHEAD = 7;

const HEADER = [
  ...["Done", "Count", "Who", "Note", "Written", "Task", "Batch", "Place", "Plants"],
  ...["From", "By", "Status", "Hours", "Caution"],
];

const MENDED_BY = "choose Refresh the due list in the Nursery menu";

/** How the due tab stands, whatever a person has moved or renamed in it. */
export const DUE_LAYOUT: OwnLayout = { title: "due list", header: HEADER, mendedBy: MENDED_BY };

/** The tasks that are due within the days ahead of the settings. */
export function tasksNow(now: RecordsNow, daysAhead?: number): readonly Task[] {
  return dueTasks({
    records: now.records,
    timetable: now.timetable,
    asOf: now.asOf,
    daysAhead:
      daysAhead ??
      wholeNumberArgument("Days ahead", now.door.cell(now.settings.daysAhead), USUAL_DAYS_AHEAD),
  });
}

/**
 * Makes the due tab anew, in the same sheet. What a person has entered in it comes along, but for the tasks
 * that are in the records by now.
 *
 * @param written keys of those tasks, see dueKey
 * @throws Error when something is entered meanwhile; the tab is left as it was then
 */
export function refreshDueTab(now: RecordsNow, written: ReadonlySet<string> = new Set()): void {
  const old = ownTab(now.workbook, OWN_TABS.due);
  const values = old === null ? [] : straightValues(old, DUE_LAYOUT);
  const entries = dueEntries(values);
  // One that was left half made may hold rows of both the old list and the new one.
  const single = isHalfMade(values[0]?.[0]) ? onceEach(entries) : entries;
  const open = single.filter((entry) => !written.has(dueKey(entry)));
  makeTab(now.workbook, dueTab(now, open), (standing) => {
    if (!sameEntries(dueEntries(standing.getDataRange().getValues()), entries)) {
      throw new Error("Somebody has just entered something in the due list: try again");
    }
  });
}

/**
 * The due list as a tab of values with boxes to tick, for those who have no sidebar: ticking a box
 * records the task as done today.
 *
 * @param entries what was entered in the tab before and isn't in the records
 */
function dueTab(now: RecordsNow, entries: readonly DueEntry[]): TabContent {
  const left = [...entries];
  const rows = tasksNow(now).map((task) => {
    const at = left.findIndex(
      (entry) => entry.batch === task.batch && entry.task === task.step.name,
    );
    const [entry] = at === -1 ? [] : left.splice(at, 1);
    return [...entryCells(entry), ...taskCells(now, task)];
  });
  const { who, note, from, by } = DUE_COLUMN;
  return {
    name: OWN_TABS.due,
    madeBy:
      "due list. Tick Done (and fill Count where plants are counted) to record a task; Refresh in the menu makes it anew.",
    rows: [HEADER.map((name) => ({ text: name })), ...rows, ...left.map(offTheList)],
    frozenRows: 2,
    mendedBy: MENDED_BY,
    widths: [50, 60, 70, 120, 170, 120, 90, 110, 60, 90, 90, 110, 60, 320],
    formats: {
      // What a person types there stays text, whatever it looks like.
      [who - 1]: "@",
      [note - 1]: "@",
      [from - 1]: DAY_FORMAT,
      [by - 1]: DAY_FORMAT,
    },
  };
}

function taskCells(now: RecordsNow, task: Task): TabCell[] {
  const text = (value: string): TabCell => (value === "" ? null : { text: value });
  const date = (day: CivilDay): TabCell => ({ date: now.door.date(day) });
  const number = (value: number | null): TabCell => (value === null ? null : { number: value });
  return [
    text(task.step.name),
    text(task.batch),
    text(task.place),
    number(task.plants),
    date(task.from),
    date(task.by),
    text(task.daysLate > 0 ? `late by ${task.daysLate} days` : task.status),
    number(task.hours === null ? null : Math.round(task.hours * 10) / 10),
    text(task.step.caution),
  ];
}

/** Done, Count, Who, Note and Written, blank or as they were. */
function entryCells(entry: DueEntry | undefined): TabCell[] {
  const cells = entry?.cells ?? [];
  const { done, count, state } = DUE_COLUMN;
  return [{ tick: isTicked(cells[done - 1]) }, ...carriedCells(cells, count, state)];
}

function carriedCells(cells: readonly unknown[], first: number, last: number): TabCell[] {
  return Array.from({ length: last - first + 1 }, (_, at) => carried(cells[first - 1 + at]));
}

/** A row whose task is not due any more: what was entered in it must not go unseen. */
function offTheList({ cells }: DueEntry): TabCell[] {
  const { done, count, note, state, task } = DUE_COLUMN;
  const said = String(cells[state - 1] ?? "");
  return [
    { tick: isTicked(cells[done - 1]) },
    ...carriedCells(cells, count, note),
    {
      text: said === "" ? "not written: not on the list any more; clear the row to drop it" : said,
    },
    ...carriedCells(cells, task, HEADER.length),
  ];
}
