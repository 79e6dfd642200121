import {
  builtInTimetable,
  calendarText,
  checkTroubles,
  choiceOf,
  columnChoices,
  isoDay,
  LEAVE_ALONE,
  lastMonthSentence,
  readyOutlook,
  summaryAnswer,
  tallySentence,
} from "../core";
import { levelArgument, openDoor, wholeNumberArgument } from "../door/index";
import { answerTable } from "./answer-table";
import { compareTakes } from "./compare-takes";
import { tasksNow } from "./due-tab";
import { recordTask } from "./record-task";
import { asOfDay, type RecordsNow, recordsNow } from "./records-tab";
import { columnLetters, readTab, recordTabCandidates, setUp } from "./set-up";
import { readSettings } from "./settings";
import type { AnswerOf, ColumnGuess, RequestOf, SidebarCallName } from "./sidebar-calls";
import { takeBack } from "./take-back";
import { workbookHost } from "./workbook-host";

type Answerer<Name extends SidebarCallName> = (request: RequestOf<Name>) => AnswerOf<Name>;

/** Everything that the sidebar may ask. Requests come from a page, so nothing in them is trusted. */
export const sidebarAnswers: { readonly [Name in SidebarCallName]: Answerer<Name> } = {
  sidebarOpen: () => {
    const workbook = SpreadsheetApp.getActiveSpreadsheet();
    const settings = readSettings(workbook);
    const zone = workbook.getSpreadsheetTimeZone();
    const scriptZone = Session.getScriptTimeZone();
    return {
      workbook: workbook.getName(),
      zoneWarning:
        zone === scriptZone
          ? null
          : `The workbook's time zone is ${zone}, the script's ${scriptZone}. Days are read by the workbook's.`,
      setUp:
        settings === null
          ? null
          : {
              recordsTab: settings.recordsTab,
              asOf: isoDay(asOfDay(openDoor(workbookHost()), settings.asOf)),
              level: levelOf(settings.level),
              daysAhead: daysAheadOf(settings.daysAhead),
            },
      candidates: recordTabCandidates(workbook),
      methods: builtInTimetable().methods.map(({ name }) => name),
    };
  },
  sidebarToday: ({ daysAhead }) => {
    const now = recordsNow();
    const header = (table: number, key: string, what: "day" | "count") =>
      now.records.columns.find(
        ({ target, table: of }) =>
          of === table && target?.kind === "step" && target.key === key && target.what === what,
      )?.header ?? null;
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
          countHeader: header(table, task.step.key, "count"),
          dayHeader: header(table, task.step.key, "day"),
        };
      }),
      remark: null,
      takes: lastMonthSentence(now.records),
    };
  },
  sidebarAhead: () => {
    const now = recordsNow();
    const question = { ...now, level: levelOf(now.settings.level) };
    const { answer, batches } = readyOutlook(question);
    const ready = answerTable(answer);
    return {
      rows: ready.rows.map((row) => ({
        month: row.text("Month"),
        variety: row.text("Variety"),
        batches: row.number("Batches") ?? 0,
        fewest: row.number("Fewest") ?? 0,
        likely: row.number("Likely") ?? 0,
        most: row.number("Most") ?? 0,
      })),
      batches: batches.map(({ batch, month, isReady, days, plants }) => ({
        ...{ batch: batch.name, variety: batch.variety, place: batch.place, month, isReady },
        readyFrom: days === null ? null : isoDay(days.from),
        readyLikely: days === null ? null : isoDay(days.likely),
        readyBy: days === null ? null : isoDay(days.by),
        fewest: plants?.fewest ?? null,
        likely: plants?.likely ?? null,
        most: plants?.most ?? null,
      })),
      remark: ready.remark,
    };
  },
  sidebarTakes: ({ by }) => {
    const now = recordsNow();
    const columns = [
      ...new Set(now.records.columns.filter(isGroupColumn).map(({ header }) => header)),
    ];
    const asked = typeof by === "string" && by !== "" ? headerFor(now, by, columns) : "Variety";
    const { rows } = answerTable(summaryAnswer({ records: now.records, by: asked, level: 0.95 }));
    return {
      by: asked,
      columns,
      rows: rows.map((row) => ({
        group: row.first(),
        batches: row.number("Batches") ?? 0,
        grafted: row.number("Grafted") ?? 0,
        taken: row.number("Taken") ?? 0,
        rate: row.number("Take rate"),
        from: row.number("From"),
        to: row.number("To"),
        spread: row.number("Batch spread"),
        remark: row.text("Remark") || null,
      })),
    };
  },
  sidebarCompareTakes: (request) => {
    const { records } = recordsNow();
    const columns = records.columns.filter(isGroupColumn).map(({ header }) => header);
    return compareTakes(records, [...new Set(columns)], request);
  },
  sidebarCheck: () => {
    const now = recordsNow();
    return {
      rows: checkTroubles(now.records, { timetable: now.timetable, faults: [] }, now.asOf).map(
        ({ row, column, found, trouble, whatHappens, whatToDo, cost }) => ({
          ...{ row, column, found, trouble, whatHappens, whatToDo, cost },
        }),
      ),
      tally: tallySentence(now.records),
    };
  },
  sidebarColumns: ({ tab }) => {
    const workbook = SpreadsheetApp.getActiveSpreadsheet();
    const sheet = workbook.getSheetByName(String(tab));
    if (sheet === null) throw new Error(`There is no tab "${String(tab)}"`);
    const settings = readSettings(workbook);
    const told = settings?.recordsTab === tab ? settings.columns : [];
    const values = sheet.getDataRange().getValues();
    const records = readTab(sheet, told);
    const timetable = builtInTimetable();
    const firstTable = records.columns.filter(({ table }) => table === 0);
    return {
      tab: String(tab),
      batches: records.batches.length,
      columns: firstTable
        .filter(({ header }) => header !== "")
        .map((match): ColumnGuess => {
          const readAs = choiceOf(match, timetable);
          return {
            column: match.column,
            header: match.header,
            readAs: readAs === LEAVE_ALONE ? null : readAs,
            sure: sureness(match),
            others: match.others.map((target) => choiceOf({ ...match, target }, timetable)),
            samples: samples(
              values,
              match.column,
              records.batches.map(({ row }) => row),
            ),
          };
        }),
      // The page has a word of its own for leaving a column alone.
      choices: columnChoices(timetable).filter((choice) => choice !== LEAVE_ALONE),
    };
  },
  sidebarSetUp: setUp,
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
  sidebarSelect: ({ row, column }) => selectCell(recordsNow(), row, String(column)),
  sidebarCalendar: ({ daysAhead }) => {
    const now = recordsNow();
    return {
      fileName: `due-list-${isoDay(now.asOf)}.ics`,
      text: calendarText(tasksNow(now, wholeDays(daysAhead)), now.asOf),
    };
  },
};

function selectCell(now: RecordsNow, row: number | null, header: string): { selected: string } {
  const match = now.records.columns.find((one) => one.header === header && header !== "");
  const at = {
    row: row === null ? now.records.rows.heading : Math.max(1, Math.trunc(Number(row))),
    column: (match?.column ?? 0) + 1,
  };
  now.sheet.activate();
  now.sheet.getRange(Math.max(1, at.row), at.column).activate();
  return { selected: `${now.sheet.getName()}!${columnLetters(at.column)}${at.row}` };
}

function isGroupColumn({ target, header }: RecordsNow["records"]["columns"][number]): boolean {
  if (header === "") return false;
  if (target === null) return true;
  return (
    target.kind === "fact" &&
    !["batch", "culled", "dispatched", "closed", "note"].includes(target.fact)
  );
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

function sureness({ sureness: sure, target }: RecordsNow["records"]["columns"][number]) {
  if (target === null) return sure === 4 ? ("told" as const) : ("not used" as const);
  // A step's name over days can hardly mean anything but its day.
  return ({ 1: "likely", 2: "likely", 3: "sure", 4: "told" } as const)[sure];
}

const SAMPLES = 3;

/** The first values under a header, as text. */
function samples(
  values: readonly (readonly unknown[])[],
  column: number,
  rows: readonly number[],
): string[] {
  const door = openDoor(workbookHost());
  const found: string[] = [];
  for (const row of rows) {
    const cell = door.cell(values[row - 1]?.[column]);
    const text = typeof cell === "object" ? isoDay(cell.day) : String(cell);
    if (text !== "") found.push(text.slice(0, 40));
    if (found.length === SAMPLES) break;
  }
  return found;
}

function wholeDays(value: unknown): number {
  return typeof value === "number" && Number.isInteger(value) && value >= 0 && value <= 3660
    ? value
    : 7;
}

function levelOf(value: unknown): number {
  return levelArgument("Level", openDoor(workbookHost()).cell(value), 0.8);
}

function daysAheadOf(value: unknown): number {
  return wholeNumberArgument("Days ahead", openDoor(workbookHost()).cell(value), 7);
}
