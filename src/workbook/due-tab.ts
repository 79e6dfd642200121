import { type CivilDay, dueTasks, type Task } from "../core";
import { wholeNumberArgument } from "../door/index";
import { OWN_TABS, type TabCell, type TabContent } from "./own-tabs";
import type { RecordsNow } from "./records-tab";

const USUAL_DAYS_AHEAD = 7;

/** Columns of the due tab, from 1. What a person fills in stands first, where a phone shows it. */
export const DUE_COLUMN = {
  done: 1,
  count: 2,
  who: 3,
  note: 4,
  state: 5,
  task: 6,
  batch: 7,
  place: 8,
  plants: 9,
  from: 10,
  by: 11,
  status: 12,
  hours: 13,
  caution: 14,
} as const;

/** Row of the due tab's first task, from 1. */
export const DUE_FIRST_ROW = 3;

const HEADER = [
  ...["Done", "Count", "Who", "Note", "Written", "Task", "Batch", "Place", "Plants"],
  ...["From", "By", "Status", "Hours", "Caution"],
];

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
 * The due list as a tab of values with boxes to tick, for those who have no sidebar: ticking a box
 * records the task as done today.
 */
export function dueTab(now: RecordsNow): TabContent {
  const text = (value: string): TabCell => (value === "" ? null : { text: value });
  const date = (day: CivilDay): TabCell => ({ date: now.door.date(day) });
  const number = (value: number | null): TabCell => (value === null ? null : { number: value });
  const rows = tasksNow(now).map((task): TabCell[] => [
    { tick: false },
    null,
    null,
    null,
    null,
    text(task.step.name),
    text(task.batch),
    text(task.place),
    number(task.plants),
    date(task.from),
    date(task.by),
    text(task.daysLate > 0 ? `late by ${task.daysLate} days` : task.status),
    number(task.hours === null ? null : Math.round(task.hours * 10) / 10),
    text(task.step.caution),
  ]);
  const { from, by } = DUE_COLUMN;
  return {
    name: OWN_TABS.due,
    madeBy:
      "due list. Tick Done (and fill Count where plants are counted) to record a task; Refresh in the menu makes it anew.",
    rows: [HEADER.map((name) => ({ text: name })), ...rows],
    frozenRows: 2,
    widths: [50, 60, 70, 120, 170, 120, 90, 110, 60, 90, 90, 110, 60, 320],
    formats: { [from - 1]: "d mmm yyyy", [by - 1]: "d mmm yyyy" },
  };
}
