import type { CivilDay } from "../../core";
import type { Question, RecordAnswer, RecordRequest } from "../../wire/writing";
import type { KeptFact } from "../../wording/writing-codes";
import { withLock } from "../host/lock";
import { NOT_NEEDED } from "../host/mark";
import { fittingText } from "../host/safe-text";
import { WritingError } from "../host/writing-error";
import { plainText, type RecordsNow, recordsNow } from "../reading/records-tab";
import type { TableCell } from "../reading/table-columns";
import { marksOf } from "../tables/person-table";
import { type PlannedCell, plannedCell } from "../tables/planned-cell";
import { occupied, question, short } from "../tables/questions";
import { recordsArea } from "../tables/records-table";
import { settledNow } from "../tables/settle-log";
import { type PlannedWrite, writeUnlessAsked } from "../tables/write-asked";
import { countLike, dayLike } from "../writing/column-form";
import { type CellWrite, sameValue, type TableMarks } from "../writing/table-write";
import { countsIn, daysIn } from "./column-samples";
import { doubtsAbout, withoutColumn } from "./doubts";
import { addColumn, columnPlace, newColumnFor } from "./new-column";
import type { OwnWrites, RecordWish } from "./record-wish";
import type { TaskTarget } from "./task-cells";
import { taskTarget } from "./task-target";

/** What recording a task comes to, before anything is written. */
export interface RecordPlan extends PlannedWrite {
  /** What the log alone holds once it is written. */
  readonly inLog: readonly KeptFact[];
  /** Every cell that the task has to do with, those too that hold what they were to hold. */
  readonly planned: readonly PlannedCell[];
  /** Whether the table has a column for the count, and no count in it by now. */
  readonly missesCount: boolean;
  /** Whether it has a count in it. */
  readonly hasCount: boolean;
  /** A header that has to be written first, since the table has no column for the step; null where it has. */
  readonly newColumn: PlannedCell | null;
}

const NOTHING_PLANNED = {
  writes: [],
  kept: [],
  inLog: [],
  planned: [],
  missesCount: false,
  hasCount: false,
} as const;

const NOTHING_OWN: OwnWrites = { wroteCell: () => false, keeps: () => false };

/**
 * Records that a task was done, in the person's own table: the day, the plants counted, the note.
 * Nothing is written while something about it has to be asked.
 *
 * @throws WritingError with the values when all of it stands there already
 */
export function recordTask(request: RecordRequest): RecordAnswer {
  return withLock(() => {
    const settled = settledNow();
    const { log } = settled;
    let { now } = settled;
    let plan = planRecord(now, request);
    if (plan.newColumn !== null && plan.asked.every(({ id }) => request.sure.includes(id))) {
      addColumn({ now, log }, plan.newColumn, request.who);
      now = recordsNow();
      plan = planRecord(now, request);
    }
    const { writes, kept, planned } = plan;
    if (writes.length === 0 && kept.length === 0 && plan.newColumn === null) {
      const { task, batch } = request;
      const cells = planned.map(({ header, tab, cell, after }) => {
        return `${header} (${tab}!${cell}) ${short(plainText(now.door, after))}`;
      });
      throw new WritingError({ code: "thereAlready", task, batch, cells });
    }
    return writeUnlessAsked(
      { now, log, table: now },
      { ...plan, asked: [...plan.asked, ...notCounted(plan, request)] },
      request,
    );
  });
}

/** A count without its number is asked about before it is written. */
export function notCounted(
  { missesCount }: RecordPlan,
  { task, batch }: Pick<RecordRequest, "task" | "batch">,
): Question[] {
  return missesCount ? [question({ code: "notCounted", step: task, batch })] : [];
}

/**
 * What is to be written that a task is recorded, and what has to be asked first.
 *
 * @throws WritingError when it can't be recorded
 */
export function planRecord(
  now: RecordsNow,
  wish: RecordWish,
  own: OwnWrites = NOTHING_OWN,
): RecordPlan {
  const dayAsked = wish.day === null ? null : now.door.day("day", wish.day);
  const notDone = wish.notDone === true;
  const { batch: batchName, task } = wish;
  const target = taskTarget(now, { batchName, task, day: dayAsked, notDone });
  const day = dayAsked ?? target.recordedDay ?? now.asOf;
  const planned = plannedCells(now, { target, request: wish, day, own });
  if (target.day === null && (notDone || target.count === null)) {
    const newColumn = newColumnFor(now, target, batchName);
    if (newColumn === null) throw new WritingError({ code: "noColumn", task });
    const ask = { code: "newColumn" as const, step: task, cell: columnPlace(newColumn) };
    return {
      ...NOTHING_PLANNED,
      marks: marksIn(now, target, []),
      newColumn,
      asked: [question(ask)],
    };
  }
  const writes = planned.filter(({ before, after }) => !sameValue(before, after));
  const { kept, inLog, questions } = withoutColumn(now, { target, request: wish, own });
  const isNothing = writes.length === 0 && kept.length === 0;
  const { counted, count, recordedCount } = target;
  return {
    writes,
    kept,
    inLog,
    planned,
    asked: isNothing
      ? []
      : [
          ...doubtsAbout(now, { target, request: wish, day }),
          ...occupied(
            now,
            writes.filter((cell) => !own.wroteCell(cell)),
          ),
          ...questions,
        ],
    marks: marksIn(now, target, writes),
    missesCount:
      counted &&
      !notDone &&
      count !== null &&
      wish.count === null &&
      (recordedCount === null || own.wroteCell(count)),
    hasCount: count !== null && recordedCount !== null,
    newColumn: null,
  };
}

/** What tells the cells again; of a new line in a log, what stands beside it. */
function marksIn(now: RecordsNow, target: TaskTarget, writes: readonly CellWrite[]): TableMarks {
  const area = recordsArea(now, target.table);
  const { headerRows, nameColumn } = area;
  const row = target.name?.row ?? writes[0]?.row;
  // What the log alone will hold is written nowhere.
  if (row === undefined) return { headerRows, nameColumn, landmarks: [] };
  const written = writes.map(({ column }) => column);
  return marksOf(now, { area, row }, { written, rows: target.name === null ? "new" : "there" });
}

/** Every cell that the task has to do with, whether it holds that already or not. */
function plannedCells(
  now: RecordsNow,
  {
    target,
    request,
    day,
    own,
  }: {
    readonly target: TaskTarget;
    readonly request: RecordWish;
    readonly day: CivilDay;
    readonly own: OwnWrites;
  },
): readonly PlannedCell[] {
  const plan = (cell: TableCell | null, after: CellWrite["after"]): PlannedCell[] => {
    if (cell === null || after === "") return [];
    return [planned(cell, after)];
  };
  const planned = (cell: TableCell, after: CellWrite["after"]) =>
    plannedCell(now, cell, {
      batch: request.batch,
      task: request.task,
      after: typeof after === "string" ? fittingText(after) : after,
    });
  /** A count that is taken out of one's own line is blanked there too. */
  const blanked =
    request.count === null && target.count !== null && own.wroteCell(target.count)
      ? [planned(target.count, "")]
      : plan(target.count, countCell(now, target, request.count));
  return [
    ...plan(target.day, request.notDone ? NOT_NEEDED : dayCell(now, target, day)),
    ...blanked,
    ...plan(target.person, request.who),
    ...plan(target.note, request.note),
    ...target.alsoWrite.flatMap(({ at: cell, text }) => plan(cell, text)),
  ];
}

/** A day as it is written: a text among texts, and left as it is where it is that day already. */
function dayCell(now: RecordsNow, target: TaskTarget, day: CivilDay): CellWrite["after"] {
  const { day: cell, recordedDay } = target;
  if (cell === null) return now.door.date(day);
  const stands = now.values[cell.row - 1]?.[cell.column - 1];
  if (typeof stands === "string" && stands !== "" && recordedDay === day) return stands;
  return dayLike(daysIn(now, target, cell), cell.row, day) ?? now.door.date(day);
}

/** The same of a count. */
function countCell(now: RecordsNow, target: TaskTarget, count: number | null): CellWrite["after"] {
  const { count: cell, recordedCount } = target;
  if (count === null) return "";
  if (cell === null) return count;
  const stands = now.values[cell.row - 1]?.[cell.column - 1];
  if (typeof stands === "string" && stands !== "" && recordedCount === count) return stands;
  return countLike(countsIn(now, target, cell), cell.row, count);
}
