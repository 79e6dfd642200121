import { canWait, isoDay, lastMonth } from "../../core";
import type { CalendarAnswer, DaysAheadRequest, TodayAnswer, TodayCalls } from "../../wire/today";
import { dueCalendar } from "../../wording/due-calendar";
import { dueNow } from "../due/due-tab";
import { recordsNow } from "../reading/records-tab";
import { columnReadAs } from "../reading/table-columns";
import { trendRow } from "../takes/compare-takes";
import type { AnswerersOf } from "./answerer";
import { wholeNumber } from "./fields";

/** The tasks that are due, each with the headers that its day and its count go under. */
export function todayAnswer({ daysAhead }: DaysAheadRequest): TodayAnswer {
  const now = recordsNow();
  const { records } = now;
  // What the batch's own row has no column for goes into a line of the log.
  const log = records.tables.findIndex(({ kind }) => kind === "log");
  const headers = (table: number, key: string) => {
    const own = (what: "day" | "count") =>
      columnReadAs(records, table, `step ${key} ${what}`)?.header ?? null;
    const logged = (fact: "eventDay" | "eventCount") =>
      log === -1 ? null : (columnReadAs(records, log, `event ${fact}`)?.header ?? null);
    const [day, count] = [own("day"), own("count")];
    return day === null && count === null
      ? { dayHeader: logged("eventDay"), countHeader: logged("eventCount") }
      : { dayHeader: day, countHeader: count };
  };
  const due = dueNow(now, daysAhead);
  const month = lastMonth(records);
  const tableOf = new Map(now.records.batches.map(({ name, table }) => [name, table]));
  return {
    asOf: isoDay(now.asOf),
    tasks: due.rows.map((task) => {
      const table = tableOf.get(task.batch) ?? 0;
      return {
        batch: task.batch,
        place: task.place,
        task: task.step.name,
        plants: task.plants,
        isEstimate: task.isEstimate,
        doOn: isoDay(task.doOn),
        from: isoDay(task.from),
        by: isoDay(task.by),
        status: task.status,
        daysLate: task.daysLate,
        hours: task.hours === null ? null : Math.round(task.hours * 10) / 10,
        caution: task.step.caution,
        isLook: task.step.kind === "look",
        canWait: canWait(task, now.asOf),
        counted: task.step.counted,
        ...headers(table, task.step.key),
      };
    }),
    remarks: due.remarks,
    takes: month === null ? null : trendRow(month),
  };
}

/** The same tasks as a calendar file. */
export function calendarAnswer({ daysAhead }: DaysAheadRequest): CalendarAnswer {
  const now = recordsNow();
  return {
    fileName: `due-list-${isoDay(now.asOf)}.ics`,
    text: dueCalendar(dueNow(now, daysAhead), now.asOf),
  };
}

const DAYS_AHEAD = { daysAhead: wholeNumber({ least: 0, most: 3660, usual: 7 }) };

export const todayCalls: AnswerersOf<TodayCalls> = {
  sidebarToday: { asked: DAYS_AHEAD, answer: todayAnswer },
  sidebarCalendar: { asked: DAYS_AHEAD, answer: calendarAnswer },
};
