import { type CivilDay, isoDay, sentenceDay } from "../core";
import { withLock } from "./lock";
import { type RecordsNow, recordsNow } from "./records-tab";
import { columnLetters, today } from "./set-up";
import type { CellWritten, Question, RecordAnswer, RecordRequest } from "./sidebar-calls";
import { type Target, taskTarget } from "./task-target";
import {
  type CellWrite,
  ChangedMeanwhile,
  type Landmark,
  sameValue,
  writeCells,
} from "./write-cells";

/**
 * Records that a task was done, in the person's own table: the day, the plants counted, the note.
 * Nothing is written while something about it has to be asked.
 */
export function recordTask(request: RecordRequest): RecordAnswer {
  return withLock(() => recordUnderLock(recordsNow(), request));
}

/** The same with the lock held and the records just read. */
export function recordUnderLock(now: RecordsNow, request: RecordRequest): RecordAnswer {
  const day = now.door.day("day", request.day);
  const target = taskTarget(now, request.batch, request.task);
  const writes = plannedWrites(now, target, request, day);
  if (writes.length === 0) {
    throw new Error(`Your table has no column for ${request.task}: add one, or write a note`);
  }
  const asked = [...impossible(now, target, request, day), ...occupied(writes)];
  const answered = new Set(request.sure);
  if (asked.some(({ question }) => !answered.has(question))) {
    return { written: [], asked, logId: null };
  }
  const id = Utilities.getUuid();
  try {
    const said = { id, when: today(), who: request.who };
    writeCells(now.workbook, now.sheet, writes, landmarksOf(now, target, writes), said);
  } catch (error) {
    if (!(error instanceof ChangedMeanwhile)) throw error;
    return {
      written: [],
      asked: [{ question: error.message, stands: null, would: null }],
      logId: null,
    };
  }
  return {
    written: writes.map(
      ({ cell, header, after }): CellWritten => ({
        where: `${now.sheet.getName()}!${cell}`,
        header,
        value: shown(now, after),
      }),
    ),
    asked: [],
    logId: id,
  };
}

/** The batch's name in its row, and the header over each column that is written. */
function landmarksOf(now: RecordsNow, target: Target, writes: readonly CellWrite[]): Landmark[] {
  const value = (row: number, column: number): unknown => now.values[row - 1]?.[column - 1] ?? "";
  const places = [
    ...(target.name === null ? [] : [target.name]),
    ...writes.map(({ column }) => ({ row: target.headerRow, column })),
  ];
  return places.map(({ row, column }) => ({ row, column, value: value(row, column) }));
}

function plannedWrites(
  now: RecordsNow,
  target: Target,
  request: RecordRequest,
  day: CivilDay,
): CellWrite[] {
  const write = (
    place: { row: number; column: number; header: string } | null,
    after: CellWrite["after"],
  ): CellWrite[] => {
    if (place === null || after === "") return [];
    const { row, column, header } = place;
    const before = (now.values[row - 1]?.[column - 1] ?? "") as CellWrite["before"];
    if (sameValue(before, after)) return [];
    return [
      {
        tab: now.sheet.getName(),
        cell: `${columnLetters(column)}${row}`,
        header,
        batch: request.batch,
        task: request.task,
        before,
        after,
        row,
        column,
      },
    ];
  };
  return [
    ...write(target.day, now.door.date(day)),
    ...write(target.count, request.count ?? ""),
    ...write(target.person, request.who),
    ...write(target.note, request.note),
    ...target.alsoWrite.flatMap(({ place, text }) => write(place, text)),
  ];
}

/** What can hardly be meant; the person is asked. */
function impossible(
  now: RecordsNow,
  { before, earlierDay, stepName }: Target,
  { count, batch }: RecordRequest,
  day: CivilDay,
): Question[] {
  const asked: Question[] = [];
  const ask = (question: string) => asked.push({ question, stands: null, would: null });
  if (day > now.asOf)
    ask(`${sentenceDay(day)} lies after today, ${sentenceDay(now.asOf)}. Is it right?`);
  if (earlierDay !== null && day < earlierDay.day) {
    ask(
      `${stepName} on ${sentenceDay(day)} would be before ${earlierDay.name} on ${sentenceDay(earlierDay.day)}. Is it right?`,
    );
  }
  if (count !== null && (!Number.isInteger(count) || count < 0)) {
    throw new Error(`The count must be a whole number of plants, 0 or more; found ${count}`);
  }
  if (count !== null && before !== null && count > before.count) {
    ask(`${count} are more than the ${before.count} at ${before.name} of ${batch}. Is it right?`);
  }
  return asked;
}

/** Cells that hold something already. */
function occupied(writes: readonly CellWrite[]): Question[] {
  return writes
    .filter(({ before }) => before !== "")
    .map(({ cell, header, before, after }) => {
      const [stands, would] = [plain(before), plain(after)];
      return {
        question: `${header} (${cell}) holds ${stands} already. Write ${would} over it?`,
        stands,
        would,
      };
    });
}

function plain(value: CellWrite["before"]): string {
  return value instanceof Date
    ? Utilities.formatDate(
        value,
        SpreadsheetApp.getActiveSpreadsheet().getSpreadsheetTimeZone(),
        "yyyy-MM-dd",
      )
    : String(value);
}

function shown(now: RecordsNow, value: CellWrite["after"]): string {
  if (!(value instanceof Date)) return String(value);
  const cell = now.door.cell(value);
  return typeof cell === "object" ? isoDay(cell.day) : String(cell);
}
