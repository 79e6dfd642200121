import {
  builtInTimetable,
  checkedRecords,
  costOf,
  isoDay,
  lastMonth,
  leftOutOfOpen,
  readyPlants,
  summedTakes,
  type TimetableFault,
} from "../../core";
import { levelArgument, openDoor, wholeNumberArgument } from "../../door/index";
import * as check from "../../sentences/made/check";
import type { AnswerOf, RequestOf, SidebarCallName } from "../../wire/calls";
import type { CheckRow } from "../../wire/check";
import { capital } from "../../wording/capital";
import { tallySentence, troubleWords } from "../../wording/check";
import { dueCalendar } from "../../wording/due-calendar";
import { faultSentence } from "../../wording/timetable";
import { tasksNow } from "../due/due-tab";
import { cellName } from "../host/cell-name";
import { workbookHost } from "../host/workbook-host";
import { addOrder } from "../orders/add-order";
import { makeOrderTab } from "../orders/order-plan-tab";
import { ordersAnswer } from "../orders/orders-answer";
import { orderPlanned } from "../orders/planned-order";
import { groupHeaders } from "../reading/group-headers";
import { initialsIn, namedTexts } from "../reading/named-text";
import { asOfDay, type RecordsNow, recordsNow } from "../reading/records-tab";
import { columnReadAs } from "../reading/table-columns";
import { timetableCandidates, timetableToGuessBy } from "../reading/timetable-source";
import { TAKES_LEVEL, usualGrouping } from "../reading/usual-grouping";
import { blockedSentences } from "../set-up/blocked-tabs";
import { columnGuesses } from "../set-up/column-guesses";
import { setUp } from "../set-up/set-up";
import { recordTabCandidates } from "../set-up/tab-candidates";
import { LABEL } from "../settings/found-settings";
import { readSettings } from "../settings/settings";
import { lastWrites } from "../tables/last-writes";
import { makeOrdersTab } from "../tables/orders-tab";
import { takeBack } from "../tables/take-back";
import { OWN_TABS } from "../tabs/own-tabs";
import { personTabs } from "../tabs/person-tabs";
import { compareTakes, trendRow } from "../takes/compare-takes";
import { recordTask } from "../tasks/record-task";
import { makeCrewTab } from "../work/crew-tabs";
import { plannedDays } from "../work/planned-days";

type Answerer<Name extends SidebarCallName> = (request: RequestOf<Name>) => AnswerOf<Name>;

/** Everything that the sidebar may ask. Requests come from a page, so nothing in them is trusted. */
export const sidebarAnswers: { readonly [Name in SidebarCallName]: Answerer<Name> } = {
  sidebarOpen: () => {
    const workbook = SpreadsheetApp.getActiveSpreadsheet();
    const settings = readSettings(workbook);
    const zones = {
      workbook: workbook.getSpreadsheetTimeZone(),
      script: Session.getScriptTimeZone(),
    };
    const tabs = personTabs(workbook);
    const timetables = timetableCandidates(tabs);
    const usable = timetables.find(({ trouble }) => trouble === null)?.tab ?? null;
    const guessBy = settings === null ? usable : settings.timetableTab;
    return {
      workbook: workbook.getName(),
      zones: zones.workbook === zones.script ? null : zones,
      inTheWay: settings === null ? [] : blockedSentences(workbook),
      setUp:
        settings === null
          ? null
          : {
              recordsTab: settings.recordsTab,
              timetableTab: settings.timetableTab,
              asOf: isoDay(asOfDay(openDoor(workbookHost()), settings.asOf)),
              level: levelOf(settings.level),
              daysAhead: daysAheadOf(settings.daysAhead),
              initials: settings.initials,
            },
      candidates: recordTabCandidates(tabs, timetableToGuessBy(workbook, guessBy)),
      timetables,
      methods: builtInTimetable().methods.map(({ name }) => name),
    };
  },
  sidebarToday: ({ daysAhead }) => {
    const now = recordsNow();
    const { records } = now;
    // What the batch's own row has no column for goes into a line of the log.
    const log = records.tables.findIndex(({ kind }) => kind === "log");
    const headers = (table: number, key: string) => {
      const own = (what: string) =>
        columnReadAs(records, table, `step ${key} ${what}`)?.header ?? null;
      const logged = (fact: string) =>
        log === -1 ? null : (columnReadAs(records, log, `event ${fact}`)?.header ?? null);
      const [day, count] = [own("day"), own("count")];
      return day === null && count === null
        ? { dayHeader: logged("eventDay"), countHeader: logged("eventCount") }
        : { dayHeader: day, countHeader: count };
    };
    const month = lastMonth(records);
    const tableOf = new Map(now.records.batches.map(({ name, table }) => [name, table]));
    return {
      asOf: isoDay(now.asOf),
      tasks: tasksNow(now, wholeDays(daysAhead)).map((task) => {
        const table = tableOf.get(task.batch) ?? 0;
        return {
          batch: task.batch,
          place: task.place,
          task: task.step.name,
          plants: task.plants,
          doOn: isoDay(task.doOn),
          from: isoDay(task.from),
          by: isoDay(task.by),
          status: task.status,
          daysLate: task.daysLate,
          hours: task.hours === null ? null : Math.round(task.hours * 10) / 10,
          caution: task.step.caution,
          counted: task.step.counted,
          ...headers(table, task.step.key),
        };
      }),
      remarks: leftOutOfOpen(now),
      takes: month === null ? null : trendRow(month),
    };
  },
  sidebarAhead: () => {
    const now = recordsNow();
    const question = { ...now, level: levelOf(now.settings.level) };
    const { rows, batches, remarks } = readyPlants(question);
    return {
      rows,
      batches: batches.map(({ batch, month, isReady, days, plants }) => ({
        batch: batch.name,
        variety: batch.variety,
        place: batch.place,
        month,
        isReady,
        readyFrom: days === null ? null : isoDay(days.from),
        readyLikely: days === null ? null : isoDay(days.likely),
        readyBy: days === null ? null : isoDay(days.by),
        fewest: plants?.fewest ?? null,
        likely: plants?.likely ?? null,
        most: plants?.most ?? null,
      })),
      remarks,
    };
  },
  sidebarTakes: ({ by }) => {
    const now = recordsNow();
    const columns = groupHeaders(now.records);
    const wanted = typeof by === "string" && by !== "" ? by : usualGrouping(now.records);
    const asked = headerFor(now, wanted, columns);
    const summed = summedTakes({ records: now.records, by: asked, level: TAKES_LEVEL });
    const initials = initialsIn(now.records);
    return {
      by: asked,
      columns,
      rows: summed.groups.map((one) => ({
        group: namedTexts(one.group, summed.by, initials),
        batches: one.batches,
        grafted: one.grafted,
        taken: one.taken,
        rate: one.takeRate,
        from: one.from,
        to: one.to,
        spread: summed.spread,
        remarks: one.remarks,
      })),
    };
  },
  sidebarCompareTakes: (request) => {
    const { records, settings } = recordsNow();
    return compareTakes(records, settings.compareBy, request);
  },
  sidebarCheck: () => {
    const now = recordsNow(undefined, true);
    const { records, timetable, asOf } = now;
    const { troubles, rows } = checkedRecords(records, { timetable, faults: [] }, asOf);
    return {
      rows: [
        ...now.faults.map((fault) => timetableTrouble(fault, now.settings.timetableTab)),
        ...troubles.map((one) => ({ row: one.row, cost: costOf(one), ...troubleWords(one) })),
      ],
      tally: tallySentence(rows),
    };
  },
  sidebarColumns: ({ tab, timetable }) => columnGuesses(String(tab), tabOrNull(timetable)),
  sidebarSetUp: ({ tab, timetable, columns, methods, compareBy, initials }) =>
    setUp({
      ...(typeof compareBy === "string" ? { compareBy } : {}),
      ...(typeof initials === "boolean" ? { initials } : {}),
      tab: String(tab),
      timetable: tabOrNull(timetable),
      columns: (Array.isArray(columns) ? columns : []).map(({ header, readAs }) => ({
        header: String(header),
        readAs: readAs === null ? null : String(readAs),
      })),
      methods: Array.isArray(methods) ? methods.map(String) : [],
    }),
  sidebarRecord: (request) =>
    recordTask({
      batch: String(request.batch),
      task: String(request.task),
      day: String(request.day),
      count: request.count === null ? null : Number(request.count),
      who: String(request.who),
      note: String(request.note),
      sure: Array.isArray(request.sure) ? request.sure.map(String) : [],
    }),
  sidebarTakeBack: ({ logId }) => takeBack(String(logId)),
  sidebarLastWrites: () => lastWrites(),
  sidebarSelect: ({ row, column }) => selectCell(recordsNow(), row, String(column)),
  sidebarCalendar: ({ daysAhead }) => {
    const now = recordsNow();
    return {
      fileName: `due-list-${isoDay(now.asOf)}.ics`,
      text: dueCalendar(tasksNow(now, wholeDays(daysAhead)), now.asOf),
    };
  },
  sidebarWork: ({ days, initials }) => plannedDays(recordsNow(), days, initials === true),
  sidebarMakeCrew: () => makeCrewTab(),
  sidebarOrders: () => ordersAnswer(recordsNow()),
  sidebarPlanOrder: (request) => orderPlanned(recordsNow(), request),
  sidebarAddOrder: (request) => addOrder(request),
  sidebarOrderTab: (request) => makeOrderTab(request),
  sidebarMakeOrders: () => makeOrdersTab(),
};

/** It stands in no cell of the records, so that no cell is offered. */
function timetableTrouble(fault: TimetableFault, tab: string | null): CheckRow {
  return {
    row: null,
    column: "",
    found: fault.found,
    cost: 1,
    trouble: capital(faultSentence(fault, 0, "page")),
    whatHappens: check.onlyThisCheck(),
    whatToDo: check.correctTab({ tab: tab ?? OWN_TABS.timetable }),
  };
}

function selectCell(now: RecordsNow, row: number | null, header: string): { selected: string } {
  const match = now.records.columns.find((one) => one.header === header && header !== "");
  const at = {
    row: row === null ? now.records.rows.heading : Math.max(1, Math.trunc(Number(row))),
    column: (match?.column ?? 0) + 1,
  };
  now.sheet.activate();
  now.sheet.getRange(Math.max(1, at.row), at.column).activate();
  return { selected: `${now.sheet.getName()}!${cellName(at)}` };
}

/** The person's own header for our name of a column, so that it is not offered twice. */
function headerFor({ records }: RecordsNow, asked: string, columns: readonly string[]): string {
  if (columns.includes(asked)) return asked;
  const own = records.columns.find(
    ({ target, header }) =>
      target?.kind === "fact" && target.fact === asked.toLowerCase() && columns.includes(header),
  );
  return own?.header ?? asked;
}

function tabOrNull(value: unknown): string | null {
  return typeof value === "string" && value !== "" ? value : null;
}

function wholeDays(value: unknown): number {
  return typeof value === "number" && Number.isInteger(value) && value >= 0 && value <= 3660
    ? value
    : 7;
}

function levelOf(value: unknown): number {
  return levelArgument(LABEL.level, openDoor(workbookHost()).cell(value), 0.8);
}

function daysAheadOf(value: unknown): number {
  return wholeNumberArgument(LABEL.daysAhead, openDoor(workbookHost()).cell(value), 7);
}
