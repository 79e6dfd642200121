import type { CivilDay } from "../core";
import { cellName } from "./cell-name";
import { hardlyMeant, occupied, withoutColumn } from "./doubts";
import { headerCells } from "./find-again";
import { withLock } from "./lock";
import { minuteNow } from "./minute-now";
import { plainText, type RecordsNow, recordsNow } from "./records-tab";
import { fittingText } from "./safe-text";
import { settleLog } from "./settle-log";
import type { CellWritten, Question, RecordAnswer, RecordRequest } from "./sidebar-calls";
import type { Place } from "./table-columns";
import { type Target, taskTarget } from "./task-target";
import {
  type CellWrite,
  ChangedMeanwhile,
  type Landmark,
  sameValue,
  writeCells,
} from "./write-cells";
import type { LoggedCell } from "./write-log";

/** A request that may leave the day open: then the day that stands there, else the as-of day. */
export type RecordWish = Omit<RecordRequest, "day"> & { readonly day: string | null };

interface Recorded extends RecordAnswer {
  /** Cells that held what they were to hold. */
  readonly already: readonly CellWritten[];
  /** Whether the table has a column for the count, and no count in it by now. */
  readonly missesCount: boolean;
}

/** A cell that is to be written, or holds what it would get already. */
type Planned = CellWrite & LoggedCell;

/**
 * Records that a task was done, in the person's own table: the day, the plants counted, the note.
 * Nothing is written while something about it has to be asked.
 *
 * @throws Error with the values when all of it stands there already
 */
export function recordTask(request: RecordRequest): RecordAnswer {
  return withLock(() => {
    const now = settleLog(recordsNow());
    const { written, asked, logId, already } = recordUnderLock(now, request);
    if (written.length === 0 && asked.length === 0) {
      const cells = already.map(({ header, where, value }) => `${header} (${where}) ${value}`);
      throw new Error(
        `Nothing to write: ${request.task} of ${request.batch} is there already, ${cells.join(", ")}`,
      );
    }
    return { written, asked, logId };
  });
}

/** The same with the lock held and the records just read. */
export function recordUnderLock(now: RecordsNow, request: RecordWish): Recorded {
  const said = request.day === null ? null : now.door.day("day", request.day);
  const target = taskTarget(now, request.batch, request.task, said);
  const day = said ?? target.recordedDay ?? now.asOf;
  const planned = plannedCells(now, target, request, day);
  if (target.day === null && target.count === null) {
    throw new Error(`Your table has no column for ${request.task}: add one`);
  }
  const writes = planned.filter(({ before, after }) => !sameValue(before, after));
  const already = planned.filter((cell) => !writes.includes(cell));
  const missesCount =
    target.counted &&
    target.count !== null &&
    request.count === null &&
    target.recordedCount === null;
  const shown = (cells: readonly Planned[]) => cells.map((cell) => cellShown(now, cell));
  const without = withoutColumn(now, target, request);
  const nothing = { written: [], asked: [], logId: null, already: shown(already), missesCount };
  if (writes.length === 0 && without.kept.length === 0) return nothing;
  const asked = [
    ...hardlyMeant(now, target, request, day),
    ...occupied(now, writes),
    ...without.questions,
  ];
  const answered = new Set(request.sure);
  if (asked.some(({ question }) => !answered.has(question))) return { ...nothing, asked };
  const id = Utilities.getUuid();
  try {
    writeCells(now.workbook, now.sheet, writes, without.kept, landmarksOf(now, target, writes), {
      ...{ id, who: request.who },
      when: minuteNow(now.workbook),
    });
  } catch (error) {
    if (!(error instanceof ChangedMeanwhile)) throw error;
    const question: Question = { question: error.message, stands: null, would: null };
    return { ...nothing, asked: [question] };
  }
  return { ...nothing, written: shown(writes), logId: id };
}

/** The batch's name in its row, and the header over each column that is written. */
function landmarksOf(now: RecordsNow, target: Target, writes: readonly CellWrite[]): Landmark[] {
  const headers = headerCells(
    now.records,
    target.table,
    writes.map(({ column }) => column),
  );
  return [...(target.name === null ? [] : [target.name]), ...headers].map(({ row, column }) => ({
    ...{ row, column },
    value: now.values[row - 1]?.[column - 1] ?? "",
  }));
}

/** Every cell that the task has to do with, whether it holds that already or not. */
function plannedCells(
  now: RecordsNow,
  target: Target,
  request: RecordWish,
  day: CivilDay,
): readonly Planned[] {
  const plan = (place: Place | null, after: CellWrite["after"]): Planned[] => {
    if (place === null || after === "") return [];
    const { row, column, header } = place;
    return [
      {
        ...{ row, column, header, batch: request.batch, task: request.task },
        tab: now.sheet.getName(),
        cell: cellName(place),
        before: (now.values[row - 1]?.[column - 1] ?? "") as CellWrite["before"],
        after: typeof after === "string" ? fittingText(after) : after,
      },
    ];
  };
  return [
    ...plan(target.day, now.door.date(day)),
    ...plan(target.count, request.count ?? ""),
    ...plan(target.person, request.who),
    ...plan(target.note, request.note),
    ...target.alsoWrite.flatMap(({ place, text }) => plan(place, text)),
  ];
}

export function cellShown(now: RecordsNow, { tab, cell, header, after }: Planned): CellWritten {
  return { where: `${tab}!${cell}`, header, value: plainText(now.door, after) };
}
